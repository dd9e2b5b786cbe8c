import { alternativeAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { Disclosure } from '@/app/ui/disclosure'
import { TickField } from '@/app/ui/field'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { itemBox } from '@/app/programmes/[code]/options/items-in-address'

interface ChooseMoreItemsProps {
  view: ProgrammeView
  study: number
  name: string | undefined
  chosen: readonly string[]
}

/** Items that the alternative is to touch beside those that the study touches already. */
export function ChooseMoreItems({ view, study, name, chosen }: ChooseMoreItemsProps) {
  const more = view.state.items.filter(
    ({ definition, tailoredOut }) =>
      definition.parameters.length > 0 && !tailoredOut?.agreed && !chosen.includes(definition.key),
  )
  if (more.length === 0) return null
  return (
    <Disclosure summary="More items" printed={false}>
      <form
        method="get"
        action={alternativeAddress(view.code, study)}
        className="form-stack"
        aria-label="More items"
      >
        {name !== undefined && <input type="hidden" name="name" value={name} />}
        <div className="option-items">
          {more.map(({ definition: { key, title } }) => (
            <TickField key={key} name={itemBox(key)} label={title} />
          ))}
        </div>
        <div className="form-actions">
          <Button type="submit" kind="quiet">
            Take them in
          </Button>
        </div>
      </form>
    </Disclosure>
  )
}
