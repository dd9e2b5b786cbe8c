import { newOptionAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { ChoiceField } from '@/app/ui/field'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { FEWEST, MAX } from './count-asked'

interface ChooseItemProps {
  view: ProgrammeView
  item: string | undefined
  count: number
}

/** Which item, and how many alternatives: a plain question to the page, so that it works without scripts. */
export function ChooseItem({ view, item, count }: ChooseItemProps) {
  const items = view.state.items.filter(
    ({ definition, tailoredOut }) => definition.parameters.length > 0 && !tailoredOut?.agreed,
  )
  return (
    <form
      method="get"
      action={newOptionAddress(view.code)}
      className="form-row option-choose"
      aria-label="Choose what is compared"
    >
      <ChoiceField
        name="item"
        label="Item"
        defaultValue={item ?? ''}
        required
        choices={[
          { value: '', text: 'Choose …', disabled: true },
          ...items.map(({ definition: { key, title, stage } }) => ({
            value: key,
            text: `${STAGE_NAMES[stage]}: ${title}`,
          })),
        ]}
      />
      <ChoiceField
        name="alternatives"
        label="Alternatives"
        defaultValue={String(count)}
        choices={Array.from({ length: MAX - FEWEST + 1 }, (_, more) => ({
          value: String(FEWEST + more),
          text: String(FEWEST + more),
        }))}
      />
      <Button type="submit" kind={item ? 'quiet' : 'primary'}>
        {item ? 'Change item' : 'Continue'}
      </Button>
    </form>
  )
}
