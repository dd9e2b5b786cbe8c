/** A part of the sheet that a reader may want to go to at once. */
export interface SheetPart {
  readonly text: string
  /** The part's id on the page. */
  readonly id: string
}

/** The contents of a long sheet, in the order of the sheet. */
export function OnThisSheet({ parts }: { parts: readonly SheetPart[] }) {
  if (parts.length < 2) return null
  return (
    <nav className="on-this-sheet" aria-label="On this sheet">
      <ul>
        {parts.map(({ text, id }) => (
          <li key={id}>
            <a href={`#${id}`}>{text}</a>
          </li>
        ))}
      </ul>
    </nav>
  )
}
