import { departmentsToPlace } from './department-tag'
import { gatesToPlace } from './gate-drawing'
import { jointsToPlace } from './joint-drawing'
import { landsToPlace } from './status-shape'

const MARKS = (
  <svg
    className="marks-to-place"
    width="0"
    height="0"
    aria-hidden="true"
    dangerouslySetInnerHTML={{
      __html: jointsToPlace() + landsToPlace() + gatesToPlace() + departmentsToPlace(),
    }}
  />
)

/** Every mark of a sheet, drawn once and placed by name wherever it is shown. */
export const MarksToPlace = () => MARKS
