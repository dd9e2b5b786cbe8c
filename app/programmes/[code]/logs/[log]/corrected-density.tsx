import { LogOverTime } from '@/app/drawing/log-over-time'
import {
  fluxDensityCoefficient,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxReferenceTemperature,
} from '@/shared/plan/parameters/control-flux'
import type { Parameter } from '@/shared/plan/parameter'
import { formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import { densitySeries, USUAL_COEFFICIENT, USUAL_REFERENCE_C } from '@/shared/rules/control/flux-density'
import type { Facts } from '@/shared/rules/facts'

/** The density brought to one temperature, which is what the specification limits. */
export function CorrectedDensity({ log, facts }: { log: Log; facts: Facts }) {
  const valueOf = ({ key }: Parameter<number>) => facts.values.get(key) as number | undefined
  const [target, tolerance] = [valueOf(fluxDensityTarget), valueOf(fluxDensityTolerance)]
  const referenceC = valueOf(fluxReferenceTemperature) ?? USUAL_REFERENCE_C
  const { instants, values } = densitySeries(
    log,
    referenceC,
    valueOf(fluxDensityCoefficient) ?? USUAL_COEFFICIENT,
  )
  if (values.length === 0) return null
  return (
    <LogOverTime
      title={`${log.code} brought to ${formatQuantity(referenceC, '°C')}`}
      characteristic={`Density at ${formatQuantity(referenceC, '°C')}`}
      unit="g/ml"
      readings={instants.map((at, index) => ({ at, value: values[index]! }))}
      {...(target !== undefined && {
        centre: target,
        ...(tolerance !== undefined && {
          specification: { atLeast: target - tolerance, atMost: target + tolerance },
        }),
      })}
    />
  )
}
