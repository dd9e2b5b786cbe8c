type DigestProps = {
  /** The whole digest in hexadecimal. */
  value: string
  /** How many characters are seen. */
  length?: number
  /** See all of it, broken over lines where it must. */
  full?: boolean
}

/** The beginning of a digest; selecting or copying it takes the whole, and its title says it. */
export function Digest({ value, length = 10, full }: DigestProps) {
  if (full) return <code className="digest digest-full">{value}</code>
  return (
    <code className="digest" title={value}>
      {value.slice(0, length)}
      <span className="digest-rest" aria-hidden="true">
        {value.slice(length)}
      </span>
    </code>
  )
}
