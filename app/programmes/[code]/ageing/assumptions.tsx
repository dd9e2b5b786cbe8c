import { Section } from '@/app/ui/section'
import { Working } from '@/app/ui/working'
import { published, fromMemory } from '@/shared/sources/provenance'
import { GROWTH_ENERGIES } from '@/shared/physics/ageing-equivalence'
import { HUMIDITY_MODELS } from '@/shared/physics/acceleration-factor'
import { BELOW_BOILING_K, steamTemperatureC } from '@/shared/physics/steam-temperature'
import { formatQuantity } from '@/shared/quantity/format'

/** What has to be believed before a month is read off, and where it comes from. */
export function Assumptions() {
  return (
    <Section heading="Model assumptions">
      <Working
        lines={[
          {
            label: 'Dry heat',
            formula: 'months = hours · exp((E ÷ R)(1 ÷ T store − 1 ÷ T ageing)) ÷ 730.5',
            numbers: `E from ${GROWTH_ENERGIES.minKjMol} to ${GROWTH_ENERGIES.maxKjMol} kJ/mol`,
            result:
              'Holds while one and the same compound grows in both, and growth of compound is what spoils the surface; oxide and contamination age otherwise. The energies were measured from 70 to 170 °C and are carried down to the store.',
          },
          {
            label: 'Damp heat',
            formula:
              'months = hours · (RH ageing ÷ RH store)ⁿ · exp((E ÷ k)(1 ÷ T store − 1 ÷ T ageing)) ÷ 730.5',
            numbers: HUMIDITY_MODELS.map(
              ({ label, exponent, activationEnergyEV }) =>
                `${label}: n ${exponent}, E ${activationEnergyEV} eV`,
            ).join('; '),
            result:
              'Fitted to aluminium corroding in plastic packages, not to a surface to be soldered. Set beside a test for what it is worth; no finding rests on it.',
          },
          {
            label: 'Steam',
            formula: `held ${BELOW_BOILING_K} K below the local boiling point, so cooler the higher the laboratory lies`,
            numbers: [0, 500, 1000, 1500, 2000]
              .map(
                (heightM) => `${heightM} m: ${formatQuantity(Math.round(steamTemperatureC(heightM)), '°C')}`,
              )
              .join('; '),
            result:
              'No formula for time: steam grows other oxides than a store does. A document that claims months for steam is kept as a claim with its author, and never used.',
          },
          {
            label: 'Together',
            result:
              'A test after ageing compares lots with each other under one condition. How long a lot may wait is set by testing again before soldering.',
          },
        ]}
        sources={[
          published('NIST/SEMATECH e-Handbook 8.1.5.1, Arrhenius'),
          GROWTH_ENERGIES.source,
          published('O. Hallberg and D. S. Peck, Qual. Reliab. Eng. Int. 7 (1991) 169: exponent'),
          fromMemory('Hallberg and Peck 1991: energy; D. S. Peck, IRPS 1986, as in JEP122: both'),
          fromMemory('J-STD-002 and J-STD-003: conditioning, not ageing'),
        ]}
      />
    </Section>
  )
}
