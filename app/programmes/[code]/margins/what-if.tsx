import { reviseAddress } from '@/app/addresses'
import { useHydrated } from '@/app/forms/hydrated'
import { useWorks } from '@/app/forms/works'
import { ButtonLink } from '@/app/ui/button'
import { ChoiceField, NumberField } from '@/app/ui/field'
import { decimalText, decimalTyped } from '@/shared/quantity/decimal-typed'
import { formatQuantity } from '@/shared/quantity/format'
import { WhatWouldChange } from '../items/[item]/what-would-change'
import type { MarginsAnswer } from './judge-margins'
import { sliderEnds } from './slider-ends'
import type { ValueToTry } from './values-to-try'

interface Tried {
  readonly key: string
  readonly text: string
}

interface WhatIfProps {
  code: string
  values: readonly ValueToTry[]
  /** Keys of the values that the finding looked at reads: they come first. */
  read: readonly string[]
  tried: Tried | undefined
  onTry: (tried: Tried | undefined) => void
  value: ValueToTry | undefined
  answer: MarginsAnswer | undefined
}

const STEPS = 200

/** Another value for a specified number, and what it would do before it is saved. */
export function WhatIf({ code, values, read, tried, onTry, value, answer }: WhatIfProps) {
  const { notation } = useWorks()
  const hydrated = useHydrated()
  if (!hydrated) return null
  const choose = (key: string) => {
    const chosen = values.find((one) => one.key === key)
    onTry(chosen && { key, text: decimalText(chosen.value, notation.decimal) })
  }
  const number = tried && decimalTyped(tried.text, notation.decimal)
  const isOther = value !== undefined && number !== undefined && number !== value.value
  return (
    <section className="margin-what-if" aria-labelledby="what-if">
      <h2 id="what-if">What if another value were specified?</h2>
      <div className="form-row">
        <ChoiceField
          name="what-if-value"
          label="Specified value"
          value={tried?.key ?? ''}
          onChange={({ currentTarget }) => choose(currentTarget.value)}
          choices={[{ value: '', text: 'Choose …' }, ...inOrder(values, read)]}
        />
        {value && tried && (
          <>
            <NumberField
              name="what-if-number"
              label="Try"
              unit={value.unit === '1' ? undefined : value.unit}
              value={tried.text}
              onChange={({ currentTarget }) => onTry({ ...tried, text: currentTarget.value })}
            />
            <Slider
              value={value}
              number={number ?? value.value}
              onSlide={(slid) => onTry({ ...tried, text: decimalText(slid, notation.decimal) })}
            />
          </>
        )}
      </div>
      <div role="status" className="would-live">
        {value && answer && 'message' in answer && <p className="field-hint">{answer.message}</p>}
        {value && answer && 'turns' in answer && (
          <>
            <WhatWouldChange turned={answer.turns.turned} moved={answer.turns.steady} reach={value.reach} />
            {answer.turns.unseen.length > 0 && (
              <p className="field-hint">
                These read records too, and are judged when it is previewed: {answer.turns.unseen.join('; ')}.
              </p>
            )}
          </>
        )}
      </div>
      {isOther && (
        <p className="form-actions">
          <ButtonLink
            href={reviseAddress(code, value.item, value.key, { parameter: value.key, value: number })}
          >
            Revise {value.label} with this value
          </ButtonLink>
        </p>
      )}
    </section>
  )
}

interface SliderProps {
  value: ValueToTry
  number: number
  onSlide: (number: number) => void
}

function Slider({ value, number, onSlide }: SliderProps) {
  const [low, high] = sliderEnds(value)
  const step = value.whole ? 1 : (high - low) / STEPS
  return (
    <label className="field margin-slider">
      <span className="field-label">
        {value.label} <span className="faint">now {formatQuantity(value.value, value.unit)}</span>
      </span>
      <input
        type="range"
        min={value.whole ? Math.ceil(low) : low}
        max={value.whole ? Math.floor(high) : high}
        step={step}
        value={number}
        aria-valuetext={formatQuantity(number, value.unit)}
        onChange={({ currentTarget }) => onSlide(rounded(currentTarget.valueAsNumber))}
      />
    </label>
  )
}

/** What a hand can set a slider to: three figures. */
const rounded = (number: number): number => Number(number.toPrecision(3))

/** Those that the finding looked at reads stand first, and are marked. */
const inOrder = (values: readonly ValueToTry[], read: readonly string[]) => {
  const isRead = ({ key }: ValueToTry): boolean => read.includes(key)
  return [
    ...values
      .filter(isRead)
      .map(({ key, label }) => ({ value: key, text: `${label} (this finding reads it)` })),
    ...values.filter((one) => !isRead(one)).map(({ key, label }) => ({ value: key, text: label })),
  ]
}
