/** One step of the way to a page. */
export type Crumb = { text: string; href?: string }

/** The way to this page, outermost first. */
export function Breadcrumb({ place }: { place: readonly Crumb[] }) {
  return (
    <nav className="breadcrumb-place" aria-label="Place">
      <ol className="breadcrumb">
        {place.map(({ text, href }, position) => {
          const here = position === place.length - 1
          return (
            <li key={`${position} ${text}`}>
              {href && !here ? (
                <a href={href}>{text}</a>
              ) : (
                <span aria-current={here ? 'page' : undefined}>{text}</span>
              )}
            </li>
          )
        })}
      </ol>
    </nav>
  )
}
