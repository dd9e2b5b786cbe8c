import { capitalised } from '@/shared/quantity/capitalised'
import { defectGuideAddress, inspectionsAddress } from '@/app/addresses'
import { DEFECT_SCENES, SOUND_SCENE } from '@/app/drawing/defect-scene'
import { DefectSection } from '@/app/drawing/defect-section'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Section } from '@/app/ui/section'
import { DEFECT_GUIDE, GUIDE_SOURCE } from '@/shared/inspection/defect-guide'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { InspectionPlaces } from '../places'

export const generateMetadata = programmeTitle(({ code }) => `Guide to defects, ${code}`)

/** Every kind of defect with a joint cut through, what to look for, where it comes from and what it asks. */
export default programmePage(async ({ visit, code }) => {
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections', href: inspectionsAddress(code) }, { text: 'Guide to defects' }]}
      title="Guide to defects"
      supplement="Each kind with its joint in section, drawn from solder volume and contact angle"
      cells={[{ label: 'Kinds', value: DEFECT_KINDS.length }]}
    >
      {() => (
        <>
          <InspectionPlaces code={code} at={defectGuideAddress(code)} />
          <Section
            heading="To compare with"
            lead="Soldered side up. A sound joint wets lead and land at a small angle, and the lead’s outline shows through."
          >
            <div className="defect-guide">
              <div className="defect-entry">
                <DefectSection title="Sound joint" scene={SOUND_SCENE} />
                <p>
                  Solder feathers out on the land and climbs the lead; the barrel is full and the component
                  side shows a foot of its own. Lead-free solder is duller than tin-lead and no worse for it.
                </p>
              </div>
            </div>
          </Section>
          <Section heading="Defects" lead={`${GUIDE_SOURCE.cite} (${GUIDE_SOURCE.how}).`}>
            <div className="defect-guide">
              {DEFECT_KINDS.map((kind) => (
                <article key={kind} id={anchorOf(kind)} className="defect-entry" aria-label={kind}>
                  <DefectSection title={capitalised(kind)} scene={DEFECT_SCENES[kind]} />
                  <dl>
                    <dt>Look for</dt>
                    <dd>{DEFECT_GUIDE[kind].look}</dd>
                    <dt>Likely cause</dt>
                    <dd>{DEFECT_GUIDE[kind].cause}</dd>
                    <dt>What it asks</dt>
                    <dd>{DEFECT_GUIDE[kind].asks}</dd>
                  </dl>
                </article>
              ))}
            </div>
          </Section>
        </>
      )}
    </ProgrammeSheet>
  )
})

const anchorOf = (kind: string): string => kind.replaceAll(' ', '-')
