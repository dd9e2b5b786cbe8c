/** What a sign says: each has its own outline, so that none leans on its colour. */
export type SignKind = 'info' | 'warning' | 'refusal' | 'success'

const OUTLINES: Record<SignKind, string> = {
  info: 'M1.5 1.5H18.5V18.5H1.5Z',
  warning: 'M10 1.5L19 18H1Z',
  refusal: 'M6.5 1.5H13.5L18.5 6.5V13.5L13.5 18.5H6.5L1.5 13.5V6.5Z',
  success: 'M10 1.5A8.5 8.5 0 1 1 9.99 1.5Z',
}
const INNERS: Record<SignKind, string> = {
  info: 'M10 5V7M10 9V15.5',
  warning: 'M10 7V12.5M10 14.3V16.3',
  refusal: 'M5.5 10H14.5',
  success: 'M5.8 10.3L8.8 13.3L14.4 7',
}

/** Square with an i, triangle with a stroke, octagon with a bar, disc with a tick. The words stand beside it. */
export function Sign({ kind, size = 20 }: { kind: SignKind; size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 20 20" fill="none" aria-hidden="true">
      <path d={OUTLINES[kind]} fill="currentColor" />
      <path d={INNERS[kind]} stroke="var(--color-sheet)" strokeWidth="2" />
    </svg>
  )
}
