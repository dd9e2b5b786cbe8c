import { findingAddress, itemAddress, routeCardAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { EffectInProgramme, WorksEffect } from '@/shared/gate/works-effect'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { counted } from '@/shared/quantity/counted'

/** What a change at the works would turn before it is saved, a row for each programme in which it turns anything. */
export function EffectByProgramme({ effect }: { effect: WorksEffect }) {
  const { programmes } = effect
  return (
    <>
      <p className="would-head">
        {effect.onceTaken ? 'If it is saved and each programme takes it over' : 'If it is saved'}
      </p>
      <p>{lookedAt(effect)}</p>
      {programmes.length > 0 && (
        <RuledTable
          caption="What would turn, by programme"
          captionHidden
          rows={programmes}
          rowKey={({ programme }) => programme.code}
          columns={[
            {
              label: 'Programme',
              names: true,
              cell: ({ programme: { code, title } }) => (
                <>
                  <a href={routeCardAddress(code)}>{code}</a>, {title}
                </>
              ),
            },
            { label: 'Findings', cell: (one) => <Findings {...one} /> },
            { label: 'Signatures', cell: (one) => <Signatures {...one} /> },
          ]}
        />
      )}
    </>
  )
}

function lookedAt({ looked, more, programmes, onceTaken }: WorksEffect): string {
  if (looked === 0)
    return onceTaken ? 'There is no programme that you may read.' : 'No programme rests on it: nothing turns.'
  const among = onceTaken
    ? `${counted(looked, 'programme', 'programmes')} that you may read`
    : counted(looked, 'programme rests on it', 'programmes rest on it')
  const turns =
    programmes.length === 0
      ? 'nothing turns'
      : `something turns in ${counted(programmes.length, 'of them', 'of them')}`
  const rest = more > 0 ? ` ${more} older ones were not looked at.` : ''
  return `${among}; ${turns}.${rest}`
}

function Findings({ programme: { code }, preview: { turned, moved } }: EffectInProgramme) {
  if (turned.length === 0 && moved.length === 0) return <>none turns</>
  return (
    <div className="would">
      <ul className="would-turns">
        {turned.map(({ rule, title, before, after, found }) => (
          <li key={rule}>
            <span className="would-verdicts">
              <a href={findingAddress(code, rule)}>{title}</a>
              <VerdictMark verdict={before} />
              <span aria-hidden="true">→</span>
              <span className="sr-only">becomes</span>
              <VerdictMark verdict={after} />
            </span>
            <span>{found}</span>
          </li>
        ))}
      </ul>
      {moved.length > 0 && (
        <details className="disclosure">
          <summary>
            {moved.length === 1 ? 'One finding' : `${moved.length} findings`} with the same verdict
          </summary>
          <ul className="would-moved">
            {moved.map(({ rule, title, after, found }) => (
              <li key={rule}>
                <a href={findingAddress(code, rule)}>{title}</a>, still {after}: {found}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  )
}

function Signatures({
  programme: { code },
  preview: { approvals, revived, gates, gateSignatures },
}: EffectInProgramme) {
  const lines = [
    ...approvals.map(({ itemKey, item, department, personName }) => ({
      key: `${itemKey} ${department}`,
      href: itemAddress(code, itemKey),
      about: item,
      what: `${DEPARTMENT_NAMES[department]} (${personName}) lapses`,
    })),
    ...revived.map(({ itemKey, item, department }) => ({
      key: `${itemKey} ${department} again`,
      href: itemAddress(code, itemKey),
      about: item,
      what: `${DEPARTMENT_NAMES[department]} holds again`,
    })),
  ]
  const gatesToSign = gates.map((stage) => `gate of ${STAGE_NAMES[stage]} to be signed again`)
  const gatesLapsing = gateSignatures
    .filter(({ stage }) => !gates.includes(stage))
    .map(
      ({ stage, department, personName }) =>
        `gate of ${STAGE_NAMES[stage]}, ${DEPARTMENT_NAMES[department]} (${personName}) lapses`,
    )
  if (lines.length + gatesToSign.length + gatesLapsing.length === 0) return <>none lapses</>
  return (
    <ul className="what-rests">
      {lines.map(({ key, href, about, what }) => (
        <li key={key}>
          <a href={href}>{about}</a>: {what}
        </li>
      ))}
      {[...gatesToSign, ...gatesLapsing].map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}
