import { Section } from '@/app/ui/section'
import { StatusMark } from '@/app/ui/status-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { itemPart, PACK_PARTS, stagePart } from './parts'

/** What the pack holds, in its order: each leads to its place, the items with how they stand. */
export function Contents({ view }: { view: ProgrammeView }) {
  return (
    <Section heading="Contents">
      <ol className="print-contents">
        <Line {...PACK_PARTS.summary} />
        <Line {...PACK_PARTS.routeCard} />
        {STAGES.map((stage) => (
          <li key={stage}>
            <a href={`#${stagePart(stage)}`}>{STAGE_NAMES[stage]} in full</a>
            <ol>
              {view.judgement.items
                .filter(({ item }) => item.definition.stage === stage)
                .map(({ item: { definition }, status }) => (
                  <li key={definition.key}>
                    <a href={`#${itemPart(definition.key)}`}>{definition.title}</a>{' '}
                    <StatusMark status={status} />
                  </li>
                ))}
            </ol>
          </li>
        ))}
        {Object.values(PACK_PARTS)
          .slice(2)
          .map((part) => (
            <Line key={part.id} {...part} />
          ))}
      </ol>
    </Section>
  )
}

const Line = ({ id, title }: { id: string; title: string }) => (
  <li>
    <a href={`#${id}`}>{title}</a>
  </li>
)
