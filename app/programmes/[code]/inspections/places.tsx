import {
  agreementAddress,
  benchAddress,
  defectChartsAddress,
  defectGuideAddress,
  inspectionsAddress,
  residueAddress,
  reworkAddress,
} from '@/app/addresses'

/** The pages about looking at assemblies, and the one this is. */
export function InspectionPlaces({ code, at }: { code: string; at: string }) {
  const places = [
    { text: 'Defects and rates', href: inspectionsAddress(code) },
    { text: 'Over time', href: defectChartsAddress(code) },
    { text: 'At the bench', href: benchAddress(code) },
    { text: 'Guide to defects', href: defectGuideAddress(code) },
    { text: 'Agreement of inspectors', href: agreementAddress(code) },
    { text: 'Residue and insulation', href: residueAddress(code) },
    { text: 'Rework desk and sections', href: reworkAddress(code) },
  ]
  return (
    <nav className="inspection-places" aria-label="Inspection">
      <ul>
        {places.map(({ text, href }) => (
          <li key={href}>
            <a href={href} aria-current={href === at ? 'page' : undefined}>
              {text}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  )
}
