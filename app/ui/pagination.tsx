import { pagesToOffer } from './pages-to-offer'

type PaginationProps = {
  /** What is paged through, such as "Trail". */
  label: string
  page: number
  pages: number
  addressOf: (page: number) => string
}

/** Previous, next and the neighbouring pages, as links. */
export function Pagination({ label, page, pages, addressOf }: PaginationProps) {
  if (pages <= 1) return null
  return (
    <nav className="pagination" aria-label={label}>
      <ul>
        {pagesToOffer(page, pages).map((one, position) => (
          <li key={one || `gap ${position}`}>
            {one === 0 && <span aria-hidden="true">…</span>}
            {one === page && <span aria-current="page">{one}</span>}
            {one !== 0 && one !== page && (
              <a href={addressOf(one)}>
                <span className="sr-only">Page </span>
                {one}
              </a>
            )}
          </li>
        ))}
      </ul>
      <p>
        {page > 1 && (
          <a href={addressOf(page - 1)} rel="prev">
            Earlier page
          </a>
        )}
        {page < pages && (
          <a href={addressOf(page + 1)} rel="next">
            Later page
          </a>
        )}
      </p>
    </nav>
  )
}
