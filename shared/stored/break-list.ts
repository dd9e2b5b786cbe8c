/** Enough for anybody to see what was done; what is beyond is only counted. */
const MAX_KEPT = 200

/** Breaks as they are found: the first of them, and how many there are in all. */
export class BreakList<Break> {
  readonly first: Break[] = []
  count = 0

  add(found: Break): void {
    this.count += 1
    if (this.first.length < MAX_KEPT) this.first.push(found)
  }
}
