import { GATE_STANDINGS, type GateStatus } from '@/shared/gate/gate'
import type { Status } from '@/shared/gate/item-status'
import { GATE_INK, gateMarkup } from '@/app/ui/gate-drawing'
import { placed } from '@/app/ui/placed-by-name'
import { landName, statusInk } from '@/app/ui/status-shape'

/** A stage as the route draws it: its items one by one, settled first. */
export type RouteStage = { name: string; items: readonly Status[]; gate: GateStatus }

/** Which way the route runs, and the room it takes. */
export type RouteLayout = { runs: 'across' | 'down'; width: number; height: number }

const PITCH = 22
const LANDS = { across: { aRow: 9, atMost: 54 }, down: { aRow: 12, atMost: 48 } }
const ACROSS = { width: 960, trackY: 40, first: 18, service: 44 }
const DOWN = { width: 330, trackX: 18, first: 18, service: 30, text: 46 }

/** Room for a route of so many stages. */
export function routeLayout(runs: 'across' | 'down', stages: readonly RouteStage[]): RouteLayout {
  if (runs === 'across') {
    const rows = Math.max(1, ...stages.map((stage) => rowsOf(stage, runs)))
    return { runs, width: ACROSS.width, height: ACROSS.trackY + 40 + rows * PITCH }
  }
  const last = downTops(stages)[stages.length]!
  return { runs, width: DOWN.width, height: last + DOWN.service }
}

/** Conductor, stage lands, gates and item lands; to be placed inside an `svg` of the layout's size. */
export function RoutePicture({ layout, stages }: { layout: RouteLayout; stages: readonly RouteStage[] }) {
  const reached = reachedBy(stages)
  const places = layout.runs === 'across' ? acrossPlaces(stages) : downPlaces(stages)
  const end = places.at(-1)!.end
  return (
    <>
      <path
        className="line-bound"
        d={
          layout.runs === 'across'
            ? `M${end.x} ${end.y}h${ACROSS.service}`
            : `M${end.x} ${end.y}v${DOWN.service - 4}`
        }
      />
      <text
        x={layout.runs === 'across' ? layout.width : DOWN.text}
        y={layout.runs === 'across' ? end.y - 10 : end.y + DOWN.service - 6}
        textAnchor={layout.runs === 'across' ? 'end' : 'start'}
        className="text-soft"
      >
        service
      </text>
      {stages.map((stage, at) => (
        <StageOnRoute
          key={stage.name}
          {...{ stage, at, runs: layout.runs, state: stateOf(at, reached), place: places[at]! }}
        />
      ))}
    </>
  )
}

type Spot = { x: number; y: number }
type StagePlace = { land: Spot; gate: Spot; end: Spot; name: Spot; gateWord: Spot; items: Spot }

function acrossPlaces(stages: readonly RouteStage[]): StagePlace[] {
  const column = (ACROSS.width - ACROSS.first - ACROSS.service) / stages.length
  return stages.map((_, at) => {
    const [x, y] = [ACROSS.first + at * column, ACROSS.trackY]
    return {
      land: { x, y },
      gate: { x: x + column - 40, y },
      end: { x: x + column, y },
      name: { x: x + 22, y: y - 16 },
      gateWord: { x: x + column - 40, y: y + 26 },
      items: { x: x - 6, y: y + 52 },
    }
  })
}

function downPlaces(stages: readonly RouteStage[]): StagePlace[] {
  const tops = downTops(stages)
  return stages.map((_, at) => {
    const [x, y, end] = [DOWN.trackX, tops[at]!, tops[at + 1]!]
    return {
      land: { x, y },
      gate: { x, y: end - 34 },
      end: { x, y: end },
      name: { x: DOWN.text - 8, y: y + 5 },
      gateWord: { x: DOWN.text - 8, y: end - 30 },
      items: { x: DOWN.text + 2, y: y + 30 },
    }
  })
}

/** Where each stage begins when the route runs down, and where the last one ends. */
const downTops = (stages: readonly RouteStage[]): number[] =>
  stages.reduce<number[]>(
    (tops, stage) => [...tops, tops.at(-1)! + 84 + rowsOf(stage, 'down') * PITCH],
    [DOWN.first],
  )

const rowsOf = ({ items }: RouteStage, runs: 'across' | 'down'): number =>
  Math.ceil(Math.min(items.length, LANDS[runs].atMost) / LANDS[runs].aRow)

type TrackState = 'travelled' | 'here' | 'ahead'

/** The first stage whose gate is not open. */
const reachedBy = (stages: readonly RouteStage[]): number => {
  const first = stages.findIndex(({ gate }) => !GATE_STANDINGS[gate].isOpen)
  return first === -1 ? stages.length : first
}

const stateOf = (at: number, reached: number): TrackState =>
  at < reached ? 'travelled' : at === reached ? 'here' : 'ahead'

const TRACK_INK: Record<TrackState, string> = { travelled: 'ink-mask', here: 'ink-copper', ahead: 'ink-tin' }

type StageOnRouteProps = {
  stage: RouteStage
  at: number
  runs: 'across' | 'down'
  state: TrackState
  place: StagePlace
}

function StageOnRoute({ stage, at, runs, state, place }: StageOnRouteProps) {
  const { aRow, atMost } = LANDS[runs]
  const { land, gate, end, name, gateWord, items } = place
  const hidden = stage.items.length - atMost
  return (
    <g>
      <g className={TRACK_INK[state]}>
        <Conductor from={land} to={end} state={state} />
        <circle
          cx={land.x}
          cy={land.y}
          r={13}
          className="fill-sheet"
          stroke="currentColor"
          strokeWidth={state === 'ahead' ? 1.6 : 5}
        />
      </g>
      <text x={land.x} y={land.y + 4.5} textAnchor="middle" className="text-strong">
        {at + 1}
      </text>
      <text x={name.x} y={name.y} className="text-stage">
        {stage.name}
      </text>
      <g
        transform={`translate(${gate.x} ${gate.y})`}
        className={GATE_INK[stage.gate]}
        dangerouslySetInnerHTML={{ __html: GATE_ROOM + gateMarkup(stage.gate, runs === 'down') }}
      />
      <text
        x={gateWord.x}
        y={gateWord.y}
        textAnchor={runs === 'across' ? 'middle' : 'start'}
        className="text-soft"
      >
        gate {stage.gate}
      </text>
      <g dangerouslySetInnerHTML={{ __html: landsMarkup(stage.items.slice(0, atMost), items, aRow) }} />
      {hidden > 0 && (
        <text x={items.x + aRow * PITCH} y={items.y + 4} className="text-soft">
          + {hidden}
        </text>
      )}
    </g>
  )
}

/** The conductor ends at either side of a gate. */
const GATE_ROOM = '<rect x="-13" y="-15" width="26" height="30" class="fill-sheet"/>'

/** The lands of a stage's items, settled first, so that those of one ink lie together. */
function landsMarkup(statuses: readonly Status[], first: Spot, aRow: number): string {
  return [...new Set(statuses)]
    .map((status) => {
      const lands = statuses.map((one, item) => {
        if (one !== status) return ''
        const [column, row] = [item % aRow, Math.floor(item / aRow)]
        return placed(landName(status), { x: first.x + column * PITCH, y: first.y + row * PITCH })
      })
      return `<g class="${statusInk(status)}">${lands.join('')}</g>`
    })
    .join('')
}

function Conductor({ from, to, state }: { from: Spot; to: Spot; state: TrackState }) {
  if (state !== 'ahead') {
    return (
      <path
        className="outlined"
        strokeWidth="7"
        strokeDasharray={state === 'here' ? '13 4' : undefined}
        d={`M${from.x} ${from.y}L${to.x} ${to.y}`}
      />
    )
  }
  const [dx, dy] = from.y === to.y ? [0, 3] : [3, 0]
  return (
    <path
      className="line-thin"
      d={`M${from.x - dx} ${from.y - dy}L${to.x - dx} ${to.y - dy}M${from.x + dx} ${from.y + dy}L${to.x + dx} ${to.y + dy}`}
    />
  )
}
