import { Digest } from '@/app/ui/digest'
import { Facts } from '@/app/ui/facts'
import { ParameterValue } from '@/app/ui/parameter-value'
import { findLimit, findParameter, findRule } from '@/shared/plan/catalogue'

interface CoverShape {
  readonly values: Readonly<Record<string, unknown>>
  readonly limits: Readonly<Record<string, { value: number; document: string }>>
  readonly evidence: readonly { kind: string; sha256: string | null; url: string | null }[]
  readonly findings: readonly { rule: string; version: number; verdict: string; concession: number | null }[]
}

/** Everything a signature on the item covers, and the digest over it. */
export function Cover({ cover, digest }: { cover: string; digest: string }) {
  const { values, limits, evidence, findings } = JSON.parse(cover) as CoverShape
  return (
    <>
      <p>
        SHA-256 of what follows, as canonical JSON: <Digest value={digest} full />
      </p>
      <Facts
        facts={[
          ...Object.entries(values).map(([key, value]) => {
            const parameter = findParameter(key)
            return {
              label: parameter?.label ?? key,
              value: parameter ? (
                <ParameterValue parameter={parameter} value={value} />
              ) : (
                JSON.stringify(value)
              ),
            }
          }),
          ...Object.entries(limits).map(([key, { value, document }]) => ({
            label: `Limit: ${findLimit(key)?.label ?? key}`,
            value: `${value} by ${document}`,
          })),
          ...evidence.map(({ kind, sha256, url }, position) => ({
            label: `Evidence ${position + 1}: ${kind}`,
            value: sha256 ? <Digest value={sha256} length={16} /> : url,
          })),
          ...findings.map(({ rule, version, verdict, concession }) => ({
            label: findRule(rule)?.title ?? rule,
            value: `${verdict} (rule version ${version}${concession === null ? '' : `, concession ${concession}`})`,
          })),
        ]}
      />
    </>
  )
}
