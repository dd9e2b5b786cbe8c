/** One place to go: its words, address, and how many things wait there. */
export type Place = { text: string; href: string; waiting?: number }

type PlaceNavProps = {
  /** What the places belong to, for screen readers, such as "Programme". */
  label: string
  places: readonly Place[]
  /** The address of the place we are at. */
  current: string
}

/** The tabs of the folder: plain links, the present one marked. */
export function PlaceNav({ label, places, current }: PlaceNavProps) {
  return (
    <nav className="place-nav" aria-label={label}>
      <ul>
        {places.map(({ text, href, waiting }) => (
          <li key={href}>
            <a href={href} aria-current={href === current ? 'page' : undefined}>
              {text}
              {waiting ? (
                <span className="place-count">
                  {waiting}
                  <span className="sr-only"> waiting</span>
                </span>
              ) : null}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}
