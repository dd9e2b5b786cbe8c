import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'
import { onceFor } from './once-for'
import { placed, toPlace } from './placed-by-name'

/** A set square, a wave, a dial gauge. */
const GLYPHS: Record<Department, string> = {
  design: 'M2 14V2L14 14ZM5 11V8.5L7.5 11Z',
  production: 'M1 11C4 11 4 5 8 5S12 11 15 11M1 14H15',
  quality: 'M8 2A6 6 0 1 1 7.99 2ZM8 8L11 4.5M8 14V16',
}

/** Which department, by glyph and name. */
export const DepartmentTag = ({ department }: { department: Department }) => departmentTag(department)

/** The tag itself, for places with hundreds. */
export const departmentTag = onceFor((department: Department) => (
  <span
    className="department-tag"
    dangerouslySetInnerHTML={{
      __html:
        '<svg width="14" height="14" viewBox="0 0 16 16" aria-hidden="true">' +
        `${placed(glyphName(department))}</svg>` +
        DEPARTMENT_NAMES[department],
    }}
  />
))

const glyphName = (department: Department): string => `department-${department}`

/** The glyphs, to be placed by name; see `MarksToPlace`. */
export const departmentsToPlace = (): string =>
  DEPARTMENTS.map((department) =>
    toPlace(
      glyphName(department),
      `<path d="${GLYPHS[department]}" fill="none" stroke="currentColor" stroke-width="1.6"/>`,
    ),
  ).join('')
