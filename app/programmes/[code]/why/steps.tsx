import { fileAddress, trailEntryAddress, whyAddress } from '@/app/addresses'
import { placeAddress } from '@/app/place-address'
import { Moment } from '@/app/ui/date'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { recordedKey, type WhyStep } from '@/shared/why/step'

interface StepsProps {
  code: string
  steps: readonly WhyStep[]
  /** Entries of the trail, by what a step is recorded as. */
  entries: ReadonlyMap<string, readonly number[]>
}

/** A chain of reasons: under each thing what it rests on. */
export function Steps({ code, steps, entries }: StepsProps) {
  if (steps.length === 0) return null
  return (
    <ol className="why">
      {steps.map((step, position) => (
        <li key={`${position} ${step.what}`} className="why-step">
          <Step code={code} step={step} entries={entries} />
          <Steps code={code} steps={step.rests ?? []} entries={entries} />
        </li>
      ))}
    </ol>
  )
}

function Step({ code, step, entries }: { code: string; step: WhyStep; entries: StepsProps['entries'] }) {
  const { what, says, verdict, lines = [], words, place, file, why } = step
  return (
    <>
      <p className="why-what">
        <strong>{place ? <a href={placeAddress(code, place)}>{what}</a> : what}</strong>
        {says && <>: {says}</>} {verdict && <VerdictMark verdict={verdict} />}
        {file && (
          <>
            {' '}
            <a href={file.url ?? fileAddress(code, file.evidence)} rel="noreferrer">
              {file.name}
            </a>
          </>
        )}
      </p>
      {lines.map((line, position) => (
        <p key={position} className="why-line">
          {line}
        </p>
      ))}
      {words && <p className="why-words">“{words}”</p>}
      <Foot code={code} step={step} entries={entries} />
      {why && (
        <p className="why-foot">
          <a href={whyAddress(code, why)}>What it covered, then and today</a>
        </p>
      )}
    </>
  )
}

/** Who, when, and the entry of the trail that says so. */
function Foot({
  code,
  step: { by, recorded },
  entries,
}: {
  code: string
  step: WhyStep
  entries: StepsProps['entries']
}) {
  const seqs = recorded ? (entries.get(recordedKey(recorded)) ?? []) : []
  if (!by && seqs.length === 0) return null
  return (
    <p className="why-foot">
      {by && (
        <>
          {by.name}, <Moment at={by.at} />
        </>
      )}
      {seqs.map((seq, position) => (
        <span key={seq}>
          {position > 0 || by ? ', ' : ''}
          <a href={trailEntryAddress(code, seq)}>entry {seq} of the trail</a>
        </span>
      ))}
    </p>
  )
}
