import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'

/** A set square, a wave, a dial gauge. */
const GLYPHS: Record<Department, string> = {
  design: 'M2 14V2L14 14ZM5 11V8.5L7.5 11Z',
  production: 'M1 11C4 11 4 5 8 5S12 11 15 11M1 14H15',
  quality: 'M8 2A6 6 0 1 1 7.99 2ZM8 8L11 4.5M8 14V16',
}

/** Which department, by glyph and name. */
export function DepartmentTag({ department }: { department: Department }) {
  return (
    <span className="department-tag">
      <svg
        width="14"
        height="14"
        viewBox="0 0 16 16"
        aria-hidden="true"
        dangerouslySetInnerHTML={{
          __html: `<path d="${GLYPHS[department]}" fill="none" stroke="currentColor" stroke-width="1.6"/>`,
        }}
      />
      {DEPARTMENT_NAMES[department]}
    </span>
  )
}
