import { newOptionAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { Disclosure } from '@/app/ui/disclosure'
import { ChoiceField, TickField } from '@/app/ui/field'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { FEWEST, MAX } from './count-asked'
import { itemBox } from '../items-in-address'

interface ChooseItemsProps {
  view: ProgrammeView
  chosen: readonly string[]
  count: number
}

/** Which items the choice touches, and how many alternatives: a plain question to the page, so that it works without scripts. */
export function ChooseItems({ view, chosen, count }: ChooseItemsProps) {
  if (chosen.length === 0) return <Question view={view} chosen={chosen} count={count} />
  return (
    <Disclosure summary="Other items, or more of them" printed={false}>
      <Question view={view} chosen={chosen} count={count} />
    </Disclosure>
  )
}

function Question({ view, chosen, count }: ChooseItemsProps) {
  const items = view.state.items.filter(
    ({ definition, tailoredOut }) => definition.parameters.length > 0 && !tailoredOut?.agreed,
  )
  return (
    <form
      method="get"
      action={newOptionAddress(view.code)}
      className="form-stack"
      aria-label="Choose what is compared"
    >
      {STAGES.map((stage) => {
        const own = items.filter(({ definition }) => definition.stage === stage)
        return own.length === 0 ? null : (
          <fieldset key={stage} className="field field-fieldset">
            <legend className="field-label">{STAGE_NAMES[stage]}</legend>
            <div className="option-items">
              {own.map(({ definition: { key, title } }) => (
                <TickField
                  key={key}
                  name={itemBox(key)}
                  label={title}
                  defaultChecked={chosen.includes(key)}
                />
              ))}
            </div>
          </fieldset>
        )
      })}
      <ChoiceField
        name="alternatives"
        label="Alternatives"
        defaultValue={String(count)}
        choices={Array.from({ length: MAX - FEWEST + 1 }, (_, more) => ({
          value: String(FEWEST + more),
          text: String(FEWEST + more),
        }))}
      />
      <div className="form-actions">
        <Button type="submit" kind={chosen.length > 0 ? 'quiet' : 'primary'}>
          {chosen.length > 0 ? 'Change the items' : 'Continue'}
        </Button>
      </div>
    </form>
  )
}
