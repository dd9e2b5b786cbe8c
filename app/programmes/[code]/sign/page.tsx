import { routeCardAddress, signListAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Empty } from '@/app/ui/empty'
import { signListsOf, stageToSign } from '@/shared/gate/sign-list'
import { partRefusal } from '@/shared/policy'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { DepartmentList } from './department-list'

export const generateMetadata = programmeTitle(({ code }) => `Approvals to sign, ${code}`)

/** Many items, one signature: what this person can approve in a stage, what each covers, and what cannot be approved yet. */
export default programmePage<object, { stage?: string }>(
  async ({ visit, searchParams: { stage: wanted } }) => {
    const { view, person } = visit
    const { actor, state, judgement, code } = view
    const lists = actor.departments.map((department) => ({
      department,
      lists: signListsOf(state, judgement, actor, department),
    }))
    const stage = STAGES.find((one) => one === wanted) ?? stageToSign(lists.flatMap((entry) => entry.lists))
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={routeCardAddress(code)}
        place={[{ text: 'Approvals to sign' }]}
        title="Approvals to sign"
        supplement={state.programme.title}
        cells={STAGES.map((one) => ({
          label: STAGE_NAMES[one],
          value: (
            <a href={signListAddress(code, one)} aria-current={one === stage ? 'page' : undefined}>
              {lists.reduce(
                (sum, entry) => sum + (entry.lists.find((list) => list.stage === one)?.toSign.length ?? 0),
                0,
              )}{' '}
              to sign
            </a>
          ),
        }))}
      >
        {(readable) => {
          const refused = partRefusal('approve-items', actor)
          if (refused) return <Empty title="Nothing for you to sign">{refused}</Empty>
          return lists.flatMap(({ department, lists: own }) => {
            const list = own.find((one) => one.stage === stage)
            return list
              ? [
                  <DepartmentList
                    key={department}
                    {...{ view: readable, lists: own, list, department }}
                    hasPassword={person.hasPassword}
                  />,
                ]
              : []
          })
        }}
      </ProgrammeSheet>
    )
  },
)
