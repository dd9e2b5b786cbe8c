import type { ButtonHTMLAttributes, ReactNode } from 'react'

/** `primary` for the one thing the page wants done, `danger` for what cannot be taken back. */
export type ButtonKind = 'primary' | 'quiet' | 'danger' | 'plain'

type ButtonProps = ButtonHTMLAttributes<HTMLButtonElement> & {
  kind?: ButtonKind
  /** The work is under way: the button says so, and takes no second press. */
  pending?: boolean
  children: ReactNode
}

export function Button({ kind = 'quiet', pending, children, className, disabled, ...rest }: ButtonProps) {
  return (
    <button
      type="button"
      {...rest}
      className={`button button-${kind} ${className ?? ''}`}
      disabled={disabled || pending}
      aria-busy={pending || undefined}
    >
      {pending && <span className="button-wait" aria-hidden="true" />}
      {children}
    </button>
  )
}

/** A link that looks like a button: it goes somewhere and changes nothing. */
export function ButtonLink({
  href,
  kind = 'quiet',
  children,
}: {
  href: string
  kind?: ButtonKind
  children: ReactNode
}) {
  return (
    <a href={href} className={`button button-${kind}`}>
      {children}
    </a>
  )
}
