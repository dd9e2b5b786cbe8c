import { fileAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import type { Picture } from '@/lib/queries/pictures'

const SHOWN_IN_A_BROWSER = /\.(png|jpe?g|webp)$/i

/** Pictures, small, each leading to the whole; what a browser cannot draw is a link alone. */
export function PictureList({ code, pictures }: { code: string; pictures: readonly Picture[] }) {
  return (
    <ul className="pictures">
      {pictures.map(({ id, fileName, note, addedBy, at }) => (
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
        </li>
      ))}
    </ul>
  )
}
