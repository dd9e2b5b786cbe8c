import { randomUUID } from 'node:crypto'
import { fileAddress } from '@/app/addresses'
import { withdrawEvidence } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'
import type { Picture } from '@/lib/queries/pictures'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'

const SHOWN_IN_A_BROWSER = /\.(png|jpe?g|webp)$/i

/** Pictures, small, each leading to the whole; what a browser cannot draw is a link alone. */
export function PictureList({ view, pictures }: { view: ProgrammeView; pictures: readonly Picture[] }) {
  const { code } = view
  return (
    <ul className="pictures">
      {pictures.map(({ id, fileName, note, addedBy, addedById, at }) => (
        <li key={id}>
          <a href={fileAddress(code, id)}>
            {SHOWN_IN_A_BROWSER.test(fileName) ? (
              // The bytes are served as they are stored, so that their hash holds; nothing makes them smaller.
              // eslint-disable-next-line @next/next/no-img-element
              <img src={fileAddress(code, id)} alt={note || fileName} loading="lazy" />
            ) : (
              fileName
            )}
          </a>
          <span className="faint">
            {note && `${note}; `}
            {addedBy}, <Day at={at} />
          </span>
          {!refusal('withdraw-evidence', view.actor, { addedById }) && <Withdraw code={code} picture={id} />}
        </li>
      ))}
    </ul>
  )
}

const Withdraw = ({ code, picture }: { code: string; picture: string }) => (
  <Disclosure summary="Withdraw" printed={false}>
    <CommandForm
      action={withdrawEvidence}
      formKey={randomUUID()}
      hidden={{ programme: code, evidence: picture }}
      label="Withdraw this picture"
    >
      <TextBox name="reason" label="Why" required />
      <SubmitButton kind="danger">Withdraw</SubmitButton>
    </CommandForm>
  </Disclosure>
)
