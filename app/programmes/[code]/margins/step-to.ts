/** Where a key leads along so many ticks. */
export function stepTo(key: string, at: number, of: number): number | undefined {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return Math.min(of - 1, at + 1)
    case 'ArrowLeft':
    case 'ArrowUp':
      return Math.max(0, at - 1)
    case 'Home':
      return 0
    case 'End':
      return of - 1
    default:
      return undefined
  }
}
