import type { WorkingLine } from '@/shared/rules/finding'
import type { Source } from '@/shared/sources/source'

/** How a figure came about, line by line, and where its formulas and limits come from. */
export function Working({ lines, sources }: { lines: readonly WorkingLine[]; sources: readonly Source[] }) {
  return (
    <div className="working">
      <dl>
        {lines.map(({ label, formula, numbers, result }, position) => (
          <div key={`${position} ${label}`} className="working-line">
            <dt className="working-label">{label}</dt>
            <dd>
              {formula && <div className="working-formula">{formula}</div>}
              {numbers && <div>{numbers}</div>}
              <div className="working-result">{result}</div>
            </dd>
          </div>
        ))}
      </dl>
      {sources.length > 0 && (
        <ul className="working-sources" aria-label="Sources">
          {sources.map(({ cite, how }) => (
            <li key={cite}>
              {cite} <span className="whitespace-nowrap">({how})</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
