import { TickBox } from '@/app/forms/fields'
import { ANSWER_COLUMNS } from '@/shared/records/kinds/answer-columns'
import { tickName } from './ticked-signals'

interface SignalAnswerProps {
  /** What was recorded in answer. */
  answer:
    | {
        readonly answer: string
        readonly cause: string
        readonly action: string
        readonly by: string
        readonly on: string
      }
    | undefined
  /** Its page, where it is corrected and withdrawn. */
  address?: string | undefined
  asked: boolean
  /** Whether it may be ticked here, to be answered below. */
  may: boolean
  /** What an answer names the signal by. */
  names: readonly string[]
  /** The signal in words, for who cannot see its row. */
  message: string
}

/** What was answered to a signal; where nothing was and it is asked for, a box to tick. */
export function SignalAnswer({ answer, address, asked, may, names, message }: SignalAnswerProps) {
  if (answer) {
    const kind = ANSWER_COLUMNS.answer.options.find(({ value }) => value === answer.answer)
    return (
      <>
        {kind?.label}: {answer.cause} {answer.action} ({answer.by}, {answer.on})
        {address && (
          <>
            {' '}
            <a href={address} className="print-hidden">
              Open<span className="sr-only"> the answer to {message}</span>
            </a>
          </>
        )}
      </>
    )
  }
  if (!asked) return 'not asked for'
  if (!may) return 'not answered'
  return (
    <TickBox
      name={tickName(names)}
      label={
        <>
          Answer below<span className="sr-only">: {message}</span>
        </>
      }
    />
  )
}
