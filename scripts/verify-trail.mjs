/*
 * Checks an exported trail bundle without the program that wrote it: no
 * database, no network, nothing but Node itself.
 *
 *     node scripts/verify-trail.mjs bundle.json [--known-hash <64 hexadecimal digits>]
 *
 * Ends with 0 when the trail is whole, 1 when it is broken, 2 when the file
 * could not be checked. --known-hash (as often as wanted) gives a hash copied
 * from a printed page or another place outside the database: the trail must
 * hold an entry with it, or its end was cut off or the chain rewritten.
 *
 * What is checked, from the published rules and on purpose with no code shared
 * with the program:
 * - an entry's hash is the SHA-256 of the canonical JSON (RFC 8785) of the entry
 *   without `hash`, its `payload` text taken as the JSON value it holds;
 * - entry 1 points to 64 zeros, every other entry to the hash of the one before;
 * - numbers run 1, 2, 3 … in order;
 * - each gate's `headHash` is the hash of entry `seq`, and its `merkleRoot` is the
 *   root (RFC 9162 section 2.1.1) over entries 1 to `seq`, a leaf being the 32
 *   bytes of an entry's hash;
 * - the header says what the entries say: code and title are those that the entry
 *   `open-programme` gives, and the gates are those that the entries `sign-gate` sign,
 *   none more and none less. An installation's own trail, which no entry opens, has
 *   the code `installation`, the title `People and instruments` and no gates. A trail of the
 *   works has the code that its first entry gives, and what it is as its title; that of its people
 *   and that of its company rules are opened by no entry;
 * - each trail of the works that a gate names (`worksHeads` of its entry) is in `works`, whole up to the
 *   newest entry named, and holds each named entry with the hash named.
 *
 * Told without being a break: an entry that is older than the one before it. A clock
 * that was set back does that.
 */
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'

const FIRST_PREVIOUS_HASH = '0'.repeat(64)
const MAX_BREAKS_SHOWN = 20
/** What the trail of people and instruments is called; no entry opens it. */
const INSTALLATION = { code: 'installation', title: 'People and instruments' }
/** What the opening entries of the works' trails open, and the two trails that none opens. */
const OPENS_OF_THE_WORKS = {
  'open-line': 'Line',
  'open-machine': 'Machine',
  'add-supplier': 'Supplier',
  'describe-part': 'Part',
}
const SINGULAR_OF_THE_WORKS = {
  '00000000-0000-4000-8000-000000000001': { code: 'people', title: 'People of the works' },
  '00000000-0000-4000-8000-000000000002': { code: 'company-rules', title: 'Company rules' },
}
const PROGRESS_EVERY = 20_000
const HEX_HASH = /^[0-9a-f]{64}$/
const TEXT_FIELDS = ['trailId', 'at', 'actorId', 'actorName', 'command', 'payload', 'previousHash', 'hash']

class CannotCheck extends Error {}

function main() {
  const { path, knownHashes } = readArguments()
  const bundle = readBundle(path)
  const { entries, gates } = bundle

  const breaks = [
    ...entryBreaks(entries),
    ...orderBreaks(entries),
    ...headerBreaks(bundle),
    ...worksBreaks(bundle),
  ]
  const hashes = hashesByNumber(entries)
  const gateLines = gates.map((gate) => checkGate(gate, hashes, breaks))
  const knownLines = knownHashes.map((hash) => checkKnownHash(hash, hashes, breaks))
  breaks.sort((one, other) => one.seq - other.seq)

  const newest = newestNumber(hashes)
  say(
    `Programme ${bundle.programme.code}, ${bundle.programme.title}; exported, as the file says, ${bundle.exportedAt}`,
  )
  say(`Entries: ${entries.length}`)
  for (const line of [...gateLines, ...knownLines]) say(line)
  for (const { kind, code, entries: own } of bundle.works ?? [])
    say(`Of the works, ${kind} ${code}: ${own.length} entries`)
  sayClockSteps(entries)
  if (newest > 0) say(`Newest hash: ${hashes.get(newest)} (entry ${newest})`)
  return sayVerdict(breaks, knownHashes)
}

function sayVerdict(breaks, knownHashes) {
  if (breaks.length === 0) {
    say('Verdict: WHOLE. No entry was altered, left out, doubled or moved, and the header is what they say.')
    if (knownHashes.length === 0) {
      say(
        'A cut-off end shows only against a hash kept elsewhere: compare the newest hash with a printed page.',
      )
    }
    return 0
  }
  say(`Verdict: BROKEN, first at entry ${breaks[0].seq}.`)
  for (const { sentence } of breaks.slice(0, MAX_BREAKS_SHOWN)) say(`- ${sentence}`)
  if (breaks.length > MAX_BREAKS_SHOWN) say(`- and ${breaks.length - MAX_BREAKS_SHOWN} more`)
  return 1
}

function readArguments() {
  let parsed
  try {
    parsed = parseArgs({
      allowPositionals: true,
      options: { 'known-hash': { type: 'string', multiple: true, default: [] } },
    })
  } catch (error) {
    throw new CannotCheck(`${error.message} Usage: node verify-trail.mjs bundle.json [--known-hash <hash>]`)
  }
  const knownHashes = parsed.values['known-hash'].map((hash) => hash.trim().toLowerCase())
  const unfit = knownHashes.find((hash) => !HEX_HASH.test(hash))
  if (unfit !== undefined) throw new CannotCheck(`"${unfit}" is not a hash of 64 hexadecimal digits.`)
  if (parsed.positionals.length !== 1) {
    throw new CannotCheck('Name one file. Usage: node verify-trail.mjs bundle.json [--known-hash <hash>]')
  }
  return { path: parsed.positionals[0], knownHashes }
}

function readBundle(path) {
  let bundle
  try {
    bundle = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path)))
  } catch (error) {
    throw new CannotCheck(`${path} could not be read as JSON in UTF-8 (${error.message}).`)
  }
  if (bundle?.format !== 'liquidus-trail-bundle') throw new CannotCheck(`${path} is not a trail bundle.`)
  if (bundle.version !== 1) {
    throw new CannotCheck(`${path} is a bundle of version ${bundle.version}; this verifier reads version 1.`)
  }
  for (const list of ['entries', 'gates']) {
    if (!Array.isArray(bundle[list])) throw new CannotCheck(`${path} has no list of ${list}.`)
  }
  if (bundle.works !== undefined && !Array.isArray(bundle.works))
    throw new CannotCheck(`${path} has no list of trails of the works.`)
  for (const one of bundle.works ?? [])
    if (!Array.isArray(one?.entries))
      throw new CannotCheck(`${path} has a trail of the works without entries.`)
  if (typeof bundle.programme !== 'object' || bundle.programme === null) {
    throw new CannotCheck(`${path} does not name its programme.`)
  }
  return bundle
}

/** What is wrong with single entries: unreadable, altered, of another trail. */
function entryBreaks(entries) {
  const breaks = []
  const started = Date.now()
  for (const [index, entry] of entries.entries()) {
    if (index > 0 && index % PROGRESS_EVERY === 0) {
      const seconds = ((Date.now() - started) / 1000).toFixed(1)
      console.error(`… ${index} of ${entries.length} entries checked (${seconds} s)`)
    }
    const problem = unreadable(entry)
    if (problem) {
      breaks.push({ seq: index + 1, sentence: `The entry in place ${index + 1} ${problem}.` })
      continue
    }
    if (entry.trailId !== entries[0]?.trailId) {
      breaks.push({ seq: entry.seq, sentence: `Entry ${entry.seq} belongs to another trail.` })
    }
    if (hashOf(entry) !== entry.hash) {
      breaks.push({
        seq: entry.seq,
        sentence: `Entry ${entry.seq} was altered: its content does not give its hash.`,
      })
    }
  }
  return breaks
}

function unreadable(entry) {
  if (!hasNumber(entry)) return 'has no number (seq)'
  const missing = TEXT_FIELDS.find((field) => typeof entry[field] !== 'string')
  if (missing) return `has no text for ${missing}`
  if (!isUtcTime(entry.at)) return `has no valid UTC time ("${entry.at}")`
  return undefined
}

const hasNumber = (entry) => Number.isSafeInteger(entry?.seq) && entry.seq >= 1

/** The language rolls 31 April over to 1 May; writing the time out again shows it. */
function isUtcTime(text) {
  const time = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/.test(text) ? new Date(text) : new Date(Number.NaN)
  return !Number.isNaN(time.getTime()) && time.toISOString() === text
}

/** The hash that the entry's content gives; undefined when its payload is not canonical JSON. */
function hashOf({ hash: _, payload, ...rest }) {
  try {
    const value = JSON.parse(payload)
    if (canonical(value) !== payload) return undefined
    return sha256(canonical({ ...ownMembers(rest), payload: value }))
  } catch {
    return undefined
  }
}

/** Members that the format does not know would be hashed by nobody; they are not part of the record. */
const ownMembers = ({ trailId, seq, at, actorId, actorName, command, previousHash }) => ({
  trailId,
  seq,
  at,
  actorId,
  actorName,
  command,
  previousHash,
})

/** RFC 8785: no white space, members by the UTF-16 code units of their names. */
function canonical(value) {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  if (typeof value === 'object' && value !== null) {
    const names = Object.keys(value).sort()
    return `{${names.map((name) => `${canonical(name)}:${canonical(value[name])}`).join(',')}}`
  }
  if (typeof value === 'string' && /\p{Surrogate}/u.test(value)) throw new RangeError('lone surrogate')
  if (Object.is(value, -0)) throw new RangeError('minus zero')
  return JSON.stringify(value)
}

/** Numbers left out, doubled or out of order, and entries that do not follow the one before. */
function orderBreaks(entries) {
  const breaks = []
  const byNumber = new Map()
  let highest = 0
  for (const entry of entries.filter(hasNumber)) {
    const sameNumber = byNumber.get(entry.seq)
    if (sameNumber) {
      breaks.push({ seq: entry.seq, sentence: `Entry ${entry.seq} is there more than once.` })
      sameNumber.push(entry)
    } else {
      if (entry.seq < highest) {
        breaks.push({ seq: entry.seq, sentence: `Entry ${entry.seq} stands behind entry ${highest}.` })
      }
      byNumber.set(entry.seq, [entry])
    }
    highest = Math.max(highest, entry.seq)
  }
  if (byNumber.size === 0) breaks.push({ seq: 1, sentence: 'The trail has no entries.' })

  let before = 0
  for (const number of [...byNumber.keys()].sort((one, other) => one - other)) {
    if (number > before + 1) {
      breaks.push({
        seq: before + 1,
        sentence: `Missing: entry ${before + 1}${number - before > 2 ? ` to ${number - 1}` : ''}.`,
      })
    } else {
      const allowed = before === 0 ? [FIRST_PREVIOUS_HASH] : byNumber.get(before).map(({ hash }) => hash)
      for (const { previousHash } of byNumber.get(number)) {
        if (!allowed.includes(previousHash)) {
          const what = before === 0 ? 'is not a beginning' : `does not follow entry ${before}`
          breaks.push({ seq: number, sentence: `Entry ${number} ${what}: it points to another hash.` })
        }
      }
    }
    before = number
  }
  return breaks
}

/** Where the header says other than the entries: the programme's name, and which gates are signed. */
function headerBreaks({ programme, entries, gates }) {
  const readable = entries.filter((entry) => !unreadable(entry))
  return [...nameBreaks(programme, readable), ...signedGateBreaks(gates, readable)]
}

function nameBreaks({ code, title }, entries) {
  if (entries.length === 0) return []
  const opening = entries.find(({ command }) => command === 'open-programme')
  const ofInstallation = entries[0].trailId === 'installation'
  const ofWorks = worksName(entries[0])
  if (!opening && !ofInstallation && !ofWorks)
    return [
      { seq: 1, sentence: `No entry opens the programme, so that nothing bears out its name (${code}).` },
    ]
  const named = opening ? recorded(opening) : (ofWorks ?? INSTALLATION)
  return Object.entries({ code, title })
    .filter(([field, stated]) => named[field] !== stated)
    .map(([field, stated]) => ({
      seq: opening?.seq ?? 1,
      sentence: `The header gives the ${field} as "${stated}", the entries as "${named[field]}".`,
    }))
}

/** What the first entry of a trail of the works says it is; undefined where it opens none. */
function worksName(first) {
  const title = OPENS_OF_THE_WORKS[first.command]
  if (title) return { code: recorded(first).code, title }
  return SINGULAR_OF_THE_WORKS[first.trailId]
}

/** Trails of the works that gates rest on: each whole, and holding every entry that a gate names. */
function worksBreaks({ entries, works = [] }) {
  const breaks = []
  for (const { kind, code, entries: own } of works)
    for (const { sentence } of [...entryBreaks(own), ...orderBreaks(own)])
      breaks.push({ seq: 1, sentence: `Of the works, ${kind} ${code}: ${sentence}` })
  const held = new Map(works.map(({ entries: own }) => [own[0]?.trailId, hashesByNumber(own)]))
  for (const entry of entries.filter((one) => !unreadable(one) && one.command === 'sign-gate'))
    for (const head of recorded(entry).worksHeads ?? [])
      if (held.get(head?.trailId)?.get(head?.seq) !== head?.hash)
        breaks.push({
          seq: entry.seq,
          sentence: `Entry ${entry.seq} signs over entry ${head?.seq} of ${head?.kind} ${head?.code}, which is not in the file like that.`,
        })
  return breaks
}

/** Each signature has an entry, and each such entry a gate in the header. */
function signedGateBreaks(gates, entries) {
  const signed = entries
    .filter(({ command }) => command === 'sign-gate')
    .map((entry) => ({ entry, text: gateText(gateOf(entry)) }))
  const stated = gates.map((gate) => ({ gate, text: gateText(gate) }))
  const end = Math.max(0, ...entries.slice(-1).map(({ seq }) => seq)) + 1
  const breaks = []
  for (const { gate, text } of stated) {
    const place = signed.findIndex((candidate) => candidate.text === text)
    if (place >= 0) signed.splice(place, 1)
    else
      breaks.push({
        seq: hasNumber(gate) ? Math.min(gate.seq + 1, end) : 1,
        sentence: `The header has the gate ${gate?.stage}, signed ${gate?.signedAt}, which no entry signs like that.`,
      })
  }
  for (const { entry } of signed) {
    breaks.push({
      seq: entry.seq,
      sentence: `Entry ${entry.seq} signs the gate ${gateOf(entry).stage}, which the header leaves out or states otherwise.`,
    })
  }
  return breaks
}

/** The gate that an entry signs, as a header states it. */
function gateOf(entry) {
  const { stage, department, trailSeq, merkleRoot, headHash } = recorded(entry)
  return { stage: `${stage} (${department})`, signedAt: entry.at, seq: trailSeq, merkleRoot, headHash }
}

const gateText = (gate) =>
  JSON.stringify([gate?.stage, gate?.signedAt, gate?.seq, gate?.merkleRoot, gate?.headHash])

/** What an entry recorded; nothing where that cannot be read, which makes the entry an altered one. */
function recorded({ payload }) {
  try {
    return JSON.parse(payload) ?? {}
  } catch {
    return {}
  }
}

/** An entry older than the one before it: no break, but its time is to be doubted. */
function sayClockSteps(entries) {
  const readable = entries.filter((entry) => !unreadable(entry))
  const steps = readable.flatMap((entry, index) =>
    index > 0 && entry.at < readable[index - 1].at ? [{ entry, before: readable[index - 1] }] : [],
  )
  for (const { entry, before } of steps.slice(0, MAX_BREAKS_SHOWN))
    say(`Time runs backwards: entry ${entry.seq} says ${entry.at}, the one before it ${before.at}.`)
  if (steps.length > MAX_BREAKS_SHOWN) say(`Time runs backwards in ${steps.length} places.`)
}

/** Number to hash; where a number is there twice, the first. */
function hashesByNumber(entries) {
  const hashes = new Map()
  for (const entry of entries.filter(hasNumber)) if (!hashes.has(entry.seq)) hashes.set(entry.seq, entry.hash)
  return hashes
}

const newestNumber = (hashes) => [...hashes.keys()].reduce((one, other) => Math.max(one, other), 0)

function checkGate(gate, hashes, breaks) {
  const name = `Gate ${gate?.stage}, signed ${gate?.signedAt} over ${gate?.seq} entries`
  const problem = gateProblem(gate, hashes)
  if (!problem) return `${name}: agrees`
  // An end that is gone is broken from the first entry that should be there.
  const seq = hasNumber(gate) ? Math.min(gate.seq, newestNumber(hashes) + 1) : 1
  breaks.push({ seq, sentence: `${name}: ${problem}.` })
  return `${name}: DOES NOT AGREE`
}

function gateProblem(gate, hashes) {
  if (!hasNumber(gate)) return 'it does not say how many entries it covers'
  if (!hashes.has(gate.seq)) return 'the trail has no such entry; its end is cut off'
  if (hashes.get(gate.seq) !== gate.headHash) return `entry ${gate.seq} has another hash than the one signed`
  const covered = []
  for (let number = 1; number <= gate.seq; number++) {
    const hash = hashes.get(number)
    if (typeof hash !== 'string' || !HEX_HASH.test(hash))
      return `entry ${number} is missing, so its root cannot be formed`
    covered.push(hash)
  }
  return merkleRoot(covered) === gate.merkleRoot
    ? undefined
    : 'the entries do not give the root that was signed'
}

function checkKnownHash(known, hashes, breaks) {
  for (const [number, hash] of hashes) {
    if (hash === known) return `Known hash ${known}: it is entry ${number}`
  }
  breaks.push({
    seq: newestNumber(hashes) + 1,
    sentence: `No entry has the known hash ${known}: the end was cut off or the record rewritten.`,
  })
  return `Known hash ${known}: NOT THERE`
}

/**
 * Full subtrees are kept on a pile, largest below; two of one size become the next.
 * What is left at the end is joined from the right.
 */
function merkleRoot(entryHashes) {
  const pile = []
  for (const hash of entryHashes) {
    let tree = { size: 1, root: digest([0], Buffer.from(hash, 'hex')) }
    while (pile.at(-1)?.size === tree.size) {
      const left = pile.pop()
      tree = { size: left.size * 2, root: digest([1], left.root, tree.root) }
    }
    pile.push(tree)
  }
  return pile
    .map(({ root }) => root)
    .reduceRight((right, left) => digest([1], left, right))
    .toString('hex')
}

function digest(prefix, ...parts) {
  const hash = createHash('sha256').update(Uint8Array.from(prefix))
  for (const part of parts) hash.update(part)
  return hash.digest()
}

function sha256(text) {
  return createHash('sha256').update(text, 'utf8').digest('hex')
}

/** The file may hold anything; what it says must not steer the reader's terminal. */
function say(line) {
  console.log(line.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '�'))
}

try {
  process.exitCode = main()
} catch (error) {
  if (!(error instanceof CannotCheck)) throw error
  console.error(`Not checked: ${error.message}`)
  process.exitCode = 2
}
