import type { TrailEntry } from '@/shared/trail/entry'
import type { Sha256 } from '@/shared/trail/sha256'
import type { TrailKind } from '@/shared/works/works-kind'
import { BreakList } from './break-list'
import { compareRows, missingRows, type RowCount, type StoredRow } from './compare-rows'
import { compareRegister, fileBreak, type FileState, type RegisteredFile } from './compare-files'
import { coveredTable, COVERED_TABLES, type TableName } from './covered-tables'
import { writesOf } from './entry-writes'
import { ExpectedRows, NoSuchRow, type NamedFile } from './expected-rows'
import type { Said } from './spoken-entry'
import type { StoredBreak } from './stored-break'

/** What a comparison of what is stored with what the entries say found. */
export interface StoredFindings {
  readonly rows: number
  /** Rows of which no entry says the whole content: they were written before it was hashed. */
  readonly unhashedRows: number
  readonly files: number
  /** The first breaks, and how many there are in all. */
  readonly breaks: readonly StoredBreak[]
  readonly breakCount: number
}

/**
 * Compares what the database and the store of evidence hold with what a trail's entries say
 * was written. Takes the entries in order, then the rows of every table in any order and in
 * pages, then the files one by one. Remembers a few short texts a row and no content.
 */
export class StoredComparison {
  private readonly expected: ExpectedRows
  private readonly breaks = new BreakList<StoredBreak>()
  private readonly count: RowCount = { compared: 0, unhashed: 0 }
  private fileCount = 0

  constructor(
    private readonly sha256: Sha256,
    private readonly of: TrailKind,
  ) {
    this.expected = new ExpectedRows(sha256)
  }

  takeEntry(entry: TrailEntry): void {
    const { trailId, seq, at, actorId, actorName, command } = entry
    const said = recordedIn(entry.payload)
    const writes = writesOf(command)
    this.expected.seq = seq
    try {
      if (!said || !writes) throw new NoSuchRow(command)
      writes({ trailId, at, actorId, actorName, said }, this.expected)
    } catch {
      // Whatever the entry holds: what cannot be understood of it is told, and the walk goes on.
      this.breaks.add({ kind: 'unreadable-entry', seq, command })
    }
  }

  /** The tables whose rows have to be taken. */
  tables(): readonly TableName[] {
    const all = Object.keys(COVERED_TABLES) as TableName[]
    return all.filter((table) => coveredTable(table).of.includes(this.of))
  }

  takeRows(table: TableName, rows: readonly StoredRow[]): void {
    compareRows(table, rows, this.expected, this.count, this.breaks)
  }

  /** All rows of the table were taken: what the entries made and is not there is missing. */
  endTable(table: TableName): void {
    missingRows(table, this.expected, this.breaks)
  }

  /** The files that the entries name, by their SHA-256. */
  files(): ReadonlyMap<string, NamedFile> {
    return this.expected.files
  }

  /** Something beside rows and files that is at odds with the entries. */
  takeBreaks(breaks: readonly StoredBreak[]): void {
    for (const found of breaks) this.breaks.add(found)
  }

  /** What the register says of a file, undefined where it says nothing, and what the store found of its bytes. */
  takeFile(sha256: string, registered: RegisteredFile | undefined, state: FileState): void {
    const named = this.expected.files.get(sha256)
    if (!named) return
    this.fileCount += 1
    const broken = fileBreak(sha256, named.seq, state)
    if (broken) this.breaks.add(broken)
    const differing = compareRegister(sha256, named, registered, state, this.sha256)
    if (differing) this.breaks.add(differing)
  }

  finish(): StoredFindings {
    return {
      rows: this.count.compared,
      unhashedRows: this.count.unhashed,
      files: this.fileCount,
      breaks: this.breaks.first,
      breakCount: this.breaks.count,
    }
  }
}

function recordedIn(payload: string): Said | undefined {
  try {
    const value: unknown = JSON.parse(payload)
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Said) : undefined
  } catch {
    return undefined
  }
}
