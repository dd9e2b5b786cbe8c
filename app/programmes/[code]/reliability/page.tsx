import { reliabilityAddress, specificationAddress, startAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Empty } from '@/app/ui/empty'
import { recordAuthors } from '@/lib/queries/record-authors'
import { formatQuantity } from '@/shared/quantity/format'
import { Assumed } from './assumed'
import { Growth } from './growth'
import { InService } from './in-service'
import { knownOf } from './known'
import { LifeTests } from './life-tests'
import { RolledUp } from './rolled-up'
import { Shown } from './shown'

export const generateMetadata = programmeTitle(({ code }) => `Reliability, ${code}`)

/** The programme's reliability target: what is assumed, what is shown, and what is still to be shown. */
export default programmePage(async ({ visit, code }) => {
  const authors = await recordAuthors(visit.view.state.programme.id, ['life-test'])
  const { known, missing = [] } = knownOf(visit.view)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={reliabilityAddress(code)}
      place={[{ text: 'Reliability' }]}
      title="Reliability"
      supplement="The target, what is assumed on the way to it, and what joints of this programme have shown"
      cells={
        known
          ? [
              {
                label: 'Target',
                value: `${formatQuantity(known.target.survival * 100, '%', 6)} outlive ${formatQuantity(known.target.serviceYears, 'years')}`,
              },
              { label: 'Joints a board', value: known.target.joints },
              { label: 'Allowed a board', value: formatQuantity(known.target.boardFit, 'FIT', 4) },
              { label: 'Allowed a joint', value: formatQuantity(known.target.jointFit, 'FIT', 3) },
            ]
          : []
      }
    >
      {(view) =>
        known ? (
          <>
            <RolledUp known={known} code={view.code} />
            <div className="assumed-and-shown">
              <Assumed view={view} known={known} authors={authors} />
              <Shown view={view} known={known} />
            </div>
            <LifeTests known={known} code={view.code} />
            <Growth known={known} />
            <InService view={view} known={known} />
          </>
        ) : (
          <Empty title="There is no target yet">
            <a href={specificationAddress(view.code)}>The specification</a> lacks: {missing.join('; ')}.{' '}
            <a href={startAddress(view.code)}>State the first values</a>.
          </Empty>
        )
      }
    </ProgrammeSheet>
  )
})
