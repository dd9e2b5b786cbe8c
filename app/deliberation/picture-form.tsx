import { picturesAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { Button } from '@/app/ui/button'
import { TextField } from '@/app/ui/field'

/** Sends one picture with a plain form, scripts or not. */
export function PictureForm({
  code,
  formKey,
  about,
  label,
  refused,
}: {
  code: string
  formKey: string
  /** Names what it shows: `about` and what that is known by. */
  about: Readonly<Record<string, string | number>>
  label: string
  refused?: string | undefined
}) {
  return (
    <form
      action={picturesAddress(code)}
      method="post"
      encType="multipart/form-data"
      className="form-row"
      aria-label={label}
    >
      <input type="hidden" name="key" value={formKey} />
      {Object.entries(about).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {refused && (
        <Notice kind="refusal" announced title="The picture was not attached">
          {refused}
        </Notice>
      )}
      <TextField
        name="file"
        type="file"
        label="Picture"
        accept="image/png,image/jpeg,image/webp,image/tiff"
        hint="PNG, JPEG, WebP or TIFF, up to 50 MB."
        required
      />
      <TextField name="note" label="What it shows" optional />
      <Button type="submit">Attach the picture</Button>
    </form>
  )
}
