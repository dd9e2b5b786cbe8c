import { capitalised } from '@/shared/quantity/capitalised'
import { findingAddress } from '@/app/addresses'
import { GaugeStudyPicture } from '@/app/drawing/gauge-study-picture'
import { SharesSideBySide } from '@/app/drawing/shares-side-by-side'
import { RemedyLine } from '@/app/findings/remedy-line'
import { MarginBar } from '@/app/ui/margin-bar'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { WANTS_REMEDY, type Part } from '@/shared/rules/finding'
import type { StudiedGauge } from '@/shared/instruments/gauge-study'
import { sharesOfVariance } from '@/shared/statistics/gauge/shares-of-variance'
import { rangesOfStudy } from '@/shared/statistics/gauge/range-chart'
import { partOfStudy } from '../study-part'
import { astrayInWords } from './astray-in-words'
import { SpreadTable, VarianceTableShown } from './spread-tables'

/** A gauge study: its verdict, its readings drawn, and both computations side by side. */
export function GaugeStudySheet({ view, studied }: { view: ProgrammeView; studied: StudiedGauge }) {
  const { study, instrumentTag, result } = studied
  const part = partOfStudy(view, instrumentTag, study)
  return (
    <Section
      heading={`Gauge study ${study}`}
      lead={
        'incomplete' in result
          ? `${studied.readings} readings`
          : `${result.parts} parts, each measured ${result.trials} times by ${result.appraisers} people: ${studied.readings} readings`
      }
    >
      {part && <StudyVerdict code={view.code} part={part} />}
      {'incomplete' in result ? (
        <Notice kind="warning" title="The study cannot be worked out yet">
          {`${capitalised(result.incomplete)}.`}
        </Notice>
      ) : (
        <Worked studied={result} title={`Readings of study ${study}`} />
      )}
    </Section>
  )
}

function StudyVerdict({ code, part }: { code: string; part: Part }) {
  return (
    <article
      className={`finding finding-${part.verdict.replace(' ', '-')}`}
      aria-label="What was found of the gauge"
    >
      <header className="finding-head">
        <h3>
          <a href={findingAddress(code, 'gauges-capable')}>Fit for what it measures</a>
        </h3>
        <VerdictMark verdict={part.verdict} size={28} />
      </header>
      <div className="finding-body">
        <div className="finding-says">
          <p>{capitalised(part.found)}</p>
          {part.remedy && WANTS_REMEDY[part.verdict] && (
            <p>
              <RemedyLine remedy={part.remedy} />
            </p>
          )}
        </div>
        {part.margin && (
          <div className="finding-margin">
            <MarginBar margin={part.margin} />
          </div>
        )}
      </div>
    </article>
  )
}

type Complete = Exclude<StudiedGauge['result'], { readonly incomplete: string }>

function Worked({ studied, title }: { studied: Complete; title: string }) {
  const { names, crossed, byVariance, byRanges } = studied
  const { ranges, upperLimit, beyond } = rangesOfStudy(crossed)
  return (
    <>
      <GaugeStudyPicture
        title={title}
        parts={names.parts}
        appraisers={names.appraisers}
        readings={crossed}
        ranges={ranges}
        upperRange={upperLimit}
      />
      <p className="section-lead">{astrayInWords(beyond, names)}</p>
      <div className="picture-row">
        <SharesSideBySide
          title="Where the variance comes from"
          description="Shares of the study’s variance by analysis of variance and by averages and ranges."
          ways={['Analysis of variance', 'Averages and ranges']}
          rows={sharesOfVariance(byVariance, byRanges)}
        />
        <SpreadTable studied={studied} />
      </div>
      <VarianceTableShown studied={studied} />
    </>
  )
}
