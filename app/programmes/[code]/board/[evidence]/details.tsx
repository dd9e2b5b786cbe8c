import { boardPictureAddress } from '@/app/addresses'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { BoardArchive } from '@/lib/queries/board-files'
import type { Board } from '@/shared/board/board'
import type { BoardFinding } from '@/shared/board/judged/board-findings'
import type { PlacedPart } from '@/shared/board/judged/placed-part'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { detailBox, dimensionOf } from './detail-view'
import { pictureBox } from './picture-box'
import { placeName } from './place-name'

interface DetailsProps {
  code: string
  archive: BoardArchive
  board: Board
  /** Codes of the layers that have a picture. */
  layers: readonly string[]
  findings: readonly BoardFinding[]
}

/** How many places of one matter are enlarged. */
const EACH = 2

/** Whether there is a place to be enlarged. */
export const hasDetails = (findings: readonly BoardFinding[]): boolean => enlarged(findings).length > 0

/** The worst places that do not meet, each enlarged with its dimension, as a drawing shows a detail. */
export function Details({ findings, ...board }: DetailsProps) {
  const places = enlarged(findings)
  if (places.length === 0) return null
  return (
    <Section
      id="details"
      heading="Details"
      lead="The worst places that fail or are marginal, enlarged, seen from the top, by their names in the tables."
    >
      <div className="board-details">
        {places.map(({ name, part }) => (
          <Detail key={name} name={name} part={part} {...board} />
        ))}
      </div>
    </Section>
  )
}

const enlarged = (findings: readonly BoardFinding[]) =>
  findings.flatMap(({ letter, places }) =>
    places
      .map((part, at) => ({ name: placeName(letter, at), part }))
      .filter(({ part: { verdict } }) => verdict === 'fails' || verdict === 'marginal')
      .slice(0, EACH),
  )

interface DetailProps extends Omit<DetailsProps, 'findings'> {
  name: string
  part: PlacedPart
}

function Detail({ name, part, code, archive, board, layers }: DetailProps) {
  const box = detailBox(part)
  const whole = pictureBox(board)
  const dimension = part.ends && dimensionOf(part.ends, box)
  const copper = `copper-${part.layer.replace(' ', '-')}`
  const asOf = archive.confirmed?.at.getTime() ?? 0
  const drawn = ['board', ...layers.filter((layer) => layer === copper), 'holes']
  const line = box.width / 150
  return (
    <figure className="board-detail">
      <svg
        viewBox={`${box.minX} ${box.minY} ${box.width} ${box.height}`}
        role="img"
        aria-label={`Detail ${name}: ${part.subject}. ${part.found}`}
      >
        {drawn.map((layer) => (
          <image
            key={layer}
            href={boardPictureAddress(code, archive.evidence, layer, asOf)}
            x={whole.minX}
            y={whole.minY}
            width={whole.width}
            height={whole.height}
          />
        ))}
        {dimension ? (
          <g className="board-dimension" strokeWidth={line}>
            {dimension.arrows.map(({ from, to, turnDeg }) => (
              <g key={turnDeg}>
                <path d={`M${from.join(' ')}L${to.join(' ')}`} />
                <path
                  className="board-arrow"
                  transform={`translate(${to.join(' ')}) rotate(${turnDeg})`}
                  d={`M0 0L${-6 * line} ${2 * line}V${-2 * line}Z`}
                />
              </g>
            ))}
            <text
              x={dimension.text[0]}
              y={dimension.text[1] - 3 * line}
              fontSize={9 * line}
              strokeWidth={2 * line}
              textAnchor="middle"
            >
              {formatQuantity(measuredMm(part.ends!), 'mm', 4)}
            </text>
          </g>
        ) : (
          <circle
            className="board-dimension"
            strokeWidth={line}
            cx={part.at[0]}
            cy={-part.at[1]}
            r={box.width / 5}
          />
        )}
      </svg>
      <figcaption>
        <strong>{name}</strong> {part.subject} <VerdictMark verdict={part.verdict} />
        <br />
        {formatNumber(box.width, 3)} mm across
      </figcaption>
    </figure>
  )
}

const measuredMm = ([[ax, ay], [bx, by]]: NonNullable<PlacedPart['ends']>): number =>
  Math.round(1000 * Math.hypot(bx - ax, by - ay)) / 1000
