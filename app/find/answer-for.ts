import { termAddress } from '@/app/addresses'
import type { Answer } from '@/app/find/answer'
import { pageFindables } from '@/app/find/pages'
import { placeAddress } from '@/app/place-address'
import type { SignedIn } from '@/lib/auth/session'
import { readFindables } from '@/lib/queries/find'
import { textFromAddress } from '@/lib/queries/from-address'
import type { Findable } from '@/shared/find/findable'
import { FIND_GROUP_NAMES } from '@/shared/find/find-groups'
import { foundIn } from '@/shared/find/found'
import { GLOSSARY, termId } from '@/shared/glossary/glossary'
import type { Place } from '@/shared/place'

type Where = Place | string

/** What answers a query of a person, so many of a group at the most; what they may not read is not found. */
export async function answerFor(
  person: SignedIn,
  { query, inProgramme, most }: { query: unknown; inProgramme: unknown; most: number },
): Promise<Answer> {
  const text = textFromAddress(query)
  const here = textFromAddress(inProgramme).toUpperCase() || undefined
  const { home, findables } = await readFindables(person, text, here)
  const all: Findable<Where>[] = [...findables, ...TERMS, ...pageFindables(person, home)]
  const groups = foundIn(text, all, { here, most })
  return {
    found: groups.reduce((sum, group) => sum + group.all, 0),
    groups: groups.map(({ group, matches, all }) => ({
      name: FIND_GROUP_NAMES[group],
      all,
      matches: matches.map(({ label, detail, programme = '', where }) => ({
        label,
        detail: [detail, programme === label ? '' : programme].filter(Boolean).join(' · '),
        href: typeof where === 'string' ? where : placeAddress(programme, where),
      })),
    })),
  }
}

const TERMS: readonly Findable<string>[] = GLOSSARY.flatMap(({ terms }) =>
  terms.map((term) => ({
    group: 'term' as const,
    label: term.term,
    also: term.insteadOf ?? [],
    detail: term.meaning,
    where: termAddress(termId(term)),
  })),
)
