import { boardOf, type Board } from '@/shared/board/board'
import { layersFrom, readBoardFile, type ReadFile } from '@/shared/board/read-files'
import { layerPath } from '@/shared/board/layer-path'
import type { LayerRole, ProposedRole } from '@/shared/board/layer-role'
import type { PlacementFit } from '@/shared/board/placement/fit-placement'
import { saysSides } from '@/shared/board/placement/placement-file'
import { codeOfRole } from '@/shared/board/role-code'
import type { WatchedNets } from '@/shared/board/watched-nets'
import type { BoardReading, FileTold, LayerPicture } from './board-reading'
import { unpack } from './unpack'

/** What a person says that a file is, by its name. */
export type RolesSaid = Readonly<Record<string, LayerRole>>

/** What is said of an archive beside its files, by which it is read. */
export interface BoardSaid {
  readonly roles: RolesSaid
  /** Nets between which gaps are looked for farther than between all. */
  readonly watched: WatchedNets | undefined
}

/** Unpacks an archive and reads all of it as one board. Errors: Refused, where the archive is none. */
export function readArchive(archive: Uint8Array, { roles, watched }: BoardSaid): BoardReading {
  // Every format of board files is of one-byte characters; a reader of names finds its own.
  const text = new TextDecoder('latin1')
  const files = unpack(archive).map(({ name, bytes }) => readBoardFile({ name, text: text.decode(bytes) }))
  const roleOf = (file: ReadFile): LayerRole =>
    (Object.hasOwn(roles, file.name) ? roles[file.name] : undefined) ??
    ('proposed' in file ? file.proposed.role : { kind: 'other' })
  const layers = layersFrom(files, roleOf)
  const board = boardOf(layers, watched)
  return {
    files: files.map((file) => told(file, roleOf(file), board)),
    board,
    pictures: picturesOf(files, roleOf),
  }
}

const PICTURED: readonly LayerRole['kind'][] = ['copper', 'mask', 'legend']

/** Layers worth seeing on a board, each once, in the order in which they are drawn over each other. */
function picturesOf(files: readonly ReadFile[], roleOf: (file: ReadFile) => LayerRole): LayerPicture[] {
  const pictures = new Map<string, LayerPicture>()
  for (const kind of PICTURED)
    for (const file of files) {
      if (file.format !== 'gerber' || roleOf(file).kind !== kind) continue
      const code = codeOfRole(roleOf(file))
      if (!pictures.has(code)) pictures.set(code, { code, path: layerPath(file.layer.drawn) })
    }
  return [...pictures.values()]
}

function told(file: ReadFile, role: LayerRole, { placement }: Board): FileTold {
  const { name, format } = file
  switch (file.format) {
    case 'gerber': {
      const { drawn, unit, passed } = file.layer
      return { name, format, proposed: file.proposed, role, count: drawn.length, unit, passed }
    }
    case 'drill': {
      const { holes, reading, assumed } = file.drill
      return {
        name,
        format,
        proposed: file.proposed,
        role,
        count: holes.length,
        unit: reading.unit,
        drill: { reading, assumed },
      }
    }
    case 'netlist': {
      const { points, unit, unitAssumed, passed } = file.netlist
      const count = points.length
      return { name, format, proposed: file.proposed, role, count, unit, unitAssumed, passed }
    }
    case 'placement': {
      const fit = placement?.files.find((each) => each.name === name)
      const unit = fit?.unit ?? file.placement.unit
      return {
        name,
        format,
        ...asFitted(file.proposed, role, fit),
        count: file.placement.rows.length,
        saysSides: saysSides(file.placement),
        ...(unit && { unit }),
        ...(fit && { fit }),
      }
    }
    case 'parts list':
      return { name, format, proposed: file.proposed, role, count: file.list.length }
    case 'unread':
      return {
        name,
        format,
        refused: { reason: file.reason, ...(file.line !== undefined && { line: file.line }) },
      }
    case 'other':
      return { name, format }
  }
}

/** A unit that only the board tells is proposed with the role, to be confirmed with it. */
function asFitted(
  proposed: ProposedRole,
  role: LayerRole,
  fit: PlacementFit | undefined,
): { readonly proposed: ProposedRole; readonly role: LayerRole } {
  if (role.kind !== 'placement' || fit?.unitBy !== 'fit' || !fit.unit) return { proposed, role }
  const fitted = { ...role, unit: fit.unit }
  return { proposed: { role: fitted, by: 'fit' }, role: fitted }
}
