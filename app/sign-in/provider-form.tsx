import { providerSignInAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'

/** The way in through the installation's identity provider. */
export function ProviderForm({ name, then }: { name: string; then: string }) {
  return (
    <form
      method="post"
      action={providerSignInAddress()}
      className="form-narrow"
      aria-label={`Sign in at ${name}`}
    >
      <input type="hidden" name="then" value={then} />
      <Button type="submit" kind="primary">
        Sign in at {name}
      </Button>
    </form>
  )
}
