'use client'

import { useId, useRef, useState, type KeyboardEvent } from 'react'
import { useHydrated } from '@/app/forms/hydrated'
import { Button } from '@/app/ui/button'
import { afterKey, type ViewBox } from './view-box'
import { useDrag, useFollowedMark, useWheel, type SetView } from './view-gestures'

/** One layer that can be laid into the picture. */
export interface ViewLayer {
  readonly code: string
  readonly label: string
  readonly href: string
  readonly shown: boolean
}

/** A place marked in the picture, with y downwards. */
export interface ViewMark {
  /** What is written beside it, and what leads to it. */
  readonly name?: string
  readonly id?: string
  readonly x: number
  readonly y: number
  readonly className: string
}

interface BoardViewProps {
  title: string
  whole: ViewBox
  layers: readonly ViewLayer[]
  marks: readonly ViewMark[]
}

/** A mark is this share of what is seen. */
const MARK_SHARE = 0.018

/** One side of a board: closer, further and beside by mouse and keyboard, its layers on and off, and the places marked. */
export function BoardView({ title, whole, layers, marks }: BoardViewProps) {
  const [view, setView] = useState(whole)
  const [shown, setShown] = useState(
    () => new Set(layers.filter((each) => each.shown).map(({ code }) => code)),
  )
  const picture = useRef<HTMLDivElement>(null)
  const hint = useId()
  const scripts = useHydrated()
  useFollowedMark(marks, whole, setView)
  useWheel(picture, whole, setView)
  const dragged = useDrag(whole, setView)
  const press = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (!afterKey(event.key, view, whole)) return
    event.preventDefault()
    setView((before) => afterKey(event.key, before, whole) ?? before)
  }
  const size = Math.max(view.width, view.height) * MARK_SHARE
  return (
    <figure className="board-side">
      <div
        ref={picture}
        className={view.width < whole.width ? 'board-view board-view-close' : 'board-view'}
        role="group"
        aria-label={title}
        aria-describedby={scripts ? hint : undefined}
        tabIndex={scripts ? 0 : undefined}
        onKeyDown={press}
        {...dragged}
      >
        <svg viewBox={`${view.minX} ${view.minY} ${view.width} ${view.height}`} role="img" aria-label={title}>
          {layers
            .filter(({ code }) => shown.has(code))
            .map(({ code, href }) => (
              <image
                key={code}
                href={href}
                x={whole.minX}
                y={whole.minY}
                width={whole.width}
                height={whole.height}
              />
            ))}
          {marks.map(({ name, id, x, y, className }, at) => (
            <g key={id ?? at} id={id} className={className}>
              <circle cx={x} cy={y} r={size} strokeWidth={size / 5} />
              {name && <MarkName name={name} x={x} y={y} size={size} view={view} />}
            </g>
          ))}
        </svg>
      </div>
      <figcaption>{title}.</figcaption>
      {scripts && (
        <>
          <Controls view={view} whole={whole} setView={setView} />
          <p id={hint} className="board-hint">
            Once the picture has the focus, arrows move it, + and − bring it closer and further, 0 shows the
            whole board; so do the mouse wheel and dragging.
          </p>
          <Layers layers={layers} shown={shown} setShown={setShown} of={title} />
        </>
      )}
    </figure>
  )
}

/** Beside its mark, on the side where there is room. */
function MarkName({
  name,
  x,
  y,
  size,
  view,
}: {
  name: string
  x: number
  y: number
  size: number
  view: ViewBox
}) {
  const atRight = x + 8 * size < view.minX + view.width
  const above = y - 3 * size > view.minY
  return (
    <text
      x={atRight ? x + 1.3 * size : x - 1.3 * size}
      y={above ? y - size / 2 : y + 2 * size}
      textAnchor={atRight ? 'start' : 'end'}
      fontSize={2.2 * size}
    >
      {name}
    </text>
  )
}

/** Keys that the buttons stand for, with their words. */
const CONTROLS = [
  ['+', 'Closer'],
  ['-', 'Further'],
  ['0', 'Whole board'],
  ['ArrowLeft', 'Left'],
  ['ArrowRight', 'Right'],
  ['ArrowUp', 'Up'],
  ['ArrowDown', 'Down'],
] as const

function Controls({ view, whole, setView }: { view: ViewBox; whole: ViewBox; setView: SetView }) {
  const isWhole = view.width >= whole.width
  return (
    <p className="board-controls">
      {CONTROLS.map(([key, label]) => (
        <Button
          key={key}
          disabled={isWhole && key !== '+'}
          onClick={() => setView((before) => afterKey(key, before, whole) ?? before)}
        >
          {label}
        </Button>
      ))}
    </p>
  )
}

interface LayersProps {
  layers: readonly ViewLayer[]
  shown: ReadonlySet<string>
  setShown: (next: Set<string>) => void
  of: string
}

function Layers({ layers, shown, setShown, of }: LayersProps) {
  const turn = (code: string): void => {
    const next = new Set(shown)
    if (!next.delete(code)) next.add(code)
    setShown(next)
  }
  return (
    <fieldset className="board-layers">
      <legend>
        Layers<span className="sr-only"> of {of}</span>
      </legend>
      {layers.map(({ code, label }) => (
        <label key={code}>
          <input type="checkbox" checked={shown.has(code)} onChange={() => turn(code)} /> {label}
        </label>
      ))}
    </fieldset>
  )
}
