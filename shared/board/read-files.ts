import type { BoardLayers } from './board'
import type { Drilled, DrillFile } from './drill/drill-file'
import { readDrill } from './drill/read-drill'
import type { GerberLayer } from './gerber/gerber-layer'
import { readGerber } from './gerber/read-gerber'
import { roleByAttribute, roleByName, sideByName, type LayerRole, type ProposedRole } from './layer-role'
import type { Netlist } from './netlist/netlist-file'
import { isNetlist, readNetlist } from './netlist/read-netlist'
import { saysSides, type PlacementFile } from './placement/placement-file'
import { readPartsTable, type FileListRow } from './placement/read-parts-table'
import { readPlacement } from './placement/read-placement'
import { textOfBytes } from './tables/bytes-as-text'
import { Unreadable } from './unreadable'

export interface BoardFileText {
  readonly name: string
  readonly text: string
}

/** One file of a set: what it holds and what it is taken for, or why it was not read. */
export type ReadFile = { readonly name: string } & (
  | { readonly format: 'gerber'; readonly proposed: ProposedRole; readonly layer: GerberLayer }
  | { readonly format: 'drill'; readonly proposed: ProposedRole; readonly drill: DrillFile }
  | { readonly format: 'netlist'; readonly proposed: ProposedRole; readonly netlist: Netlist }
  | { readonly format: 'placement'; readonly proposed: ProposedRole; readonly placement: PlacementFile }
  | { readonly format: 'parts list'; readonly proposed: ProposedRole; readonly list: readonly FileListRow[] }
  | { readonly format: 'unread'; readonly line?: number; readonly reason: string }
  | { readonly format: 'other' }
)

/** Reads one file by what it holds, whatever it is called. */
export function readBoardFile({ name, text }: BoardFileText): ReadFile {
  try {
    if (isDrill(text)) {
      const drill = readDrill(text)
      return {
        name,
        format: 'drill',
        proposed: proposed(drill.attributes, name, { kind: 'drill', plated: undefined }),
        drill,
      }
    }
    if (isNetlist(text)) {
      const netlist = readNetlist(text)
      return { name, format: 'netlist', proposed: { role: { kind: 'netlist' }, by: 'content' }, netlist }
    }
    if (!isGerber(text)) return readTable({ name, text: textOfBytes(text) })
    const layer = readGerber(text)
    return { name, format: 'gerber', proposed: proposed(layer.attributes, name), layer }
  } catch (error) {
    if (error instanceof Unreadable) return { name, format: 'unread', line: error.line, reason: error.reason }
    throw error
  }
}

/** A table of components: where they are placed, or of which parts they are. */
function readTable({ name, text }: BoardFileText): ReadFile {
  const placement = readPlacement(text)
  if (placement) {
    const side = saysSides(placement) ? undefined : sideByName(name)
    const role = { kind: 'placement', side, unit: undefined, moved: false } as const
    return { name, format: 'placement', proposed: { role, by: side ? 'name' : 'content' }, placement }
  }
  const list = readPartsTable(text)
  if (!list) return { name, format: 'other' }
  return { name, format: 'parts list', proposed: { role: { kind: 'parts list' }, by: 'content' }, list }
}

const isDrill = (text: string): boolean => /^[ \t]*%?[ \t]*M48[ \t]*\r?$/m.test(text.slice(0, 4000))
const isGerber = (text: string): boolean =>
  /%(FS|MO|ADD|TF)|G04 /.test(text.slice(0, 20_000)) && text.includes('*')

function proposed(
  attributes: ReadonlyMap<string, readonly string[]>,
  name: string,
  byContent?: LayerRole,
): ProposedRole {
  const said = roleByAttribute(attributes.get('FileFunction'))
  if (said && said.kind !== 'other') return { role: said, by: 'attribute' }
  const named = said ? undefined : roleByName(name)
  if (named && named.kind !== 'netlist' && (byContent ? named.kind === 'drill' : named.kind !== 'drill'))
    return { role: named, by: 'name' }
  if (byContent) return { role: byContent, by: 'content' }
  return { role: { kind: 'other' }, by: said ? 'attribute' : 'nothing' }
}

/** The layers of a board from its files, each taken for what a person or the files say. */
export function layersFrom(files: readonly ReadFile[], roleOf: (file: ReadFile) => LayerRole): BoardLayers {
  const gerbers = files.flatMap((file) =>
    file.format === 'gerber' ? [{ role: roleOf(file), drawn: file.layer.drawn }] : [],
  )
  const copper = (side: 'top' | 'bottom') =>
    gerbers.find(({ role }) => role.kind === 'copper' && role.side === side)?.drawn
  return {
    top: copper('top'),
    bottom: copper('bottom'),
    inner: gerbers.flatMap(({ role, drawn }) =>
      role.kind === 'copper' && role.side === 'inner' ? [{ layer: role.layer, drawn }] : [],
    ),
    masks: gerbers.flatMap(({ role, drawn }) => (role.kind === 'mask' ? [{ side: role.side, drawn }] : [])),
    outline: gerbers.find(({ role }) => role.kind === 'outline')?.drawn,
    holes: files.flatMap((file) =>
      file.format === 'drill' ? withPlating(file.drill.holes, roleOf(file)) : [],
    ),
    netlist: files.flatMap((file) =>
      file.format === 'netlist' && roleOf(file).kind === 'netlist' ? [file.netlist.points] : [],
    )[0],
    placements: files.flatMap((file) => {
      if (file.format !== 'placement') return []
      const role = roleOf(file)
      if (role.kind !== 'placement') return []
      const said = { sideSaid: role.side, unitSaid: role.unit, moveSaid: role.moved }
      return [{ ...file.placement, ...said, name: file.name }]
    }),
    listed: files.flatMap((file) =>
      file.format === 'parts list' && roleOf(file).kind === 'parts list' ? [file.list] : [],
    )[0],
  }
}

/** What a person says of a whole drill file holds for the holes of which the file says nothing. */
const withPlating = (holes: readonly Drilled[], role: LayerRole): Drilled[] =>
  holes.map((hole) => ({ ...hole, plated: hole.plated ?? (role.kind === 'drill' ? role.plated : undefined) }))
