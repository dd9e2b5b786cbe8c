import { posix } from 'node:path'

/**
 * Circles between folders: imports that lead from a folder through others back to it, though no file imports
 * itself. A folder and those within it count as one, so that a list may stand beside the folder of its entries.
 * Takes pairs of importing and imported path; answers each circle as its folders in order, the first again at the end.
 */
export function folderCircles(imports) {
  const reaches = new Map()
  for (const [from, to] of imports) {
    const [folder, other] = [posix.dirname(from), posix.dirname(to)]
    if (within(folder, other) || within(other, folder)) continue
    reaches.set(folder, (reaches.get(folder) ?? new Set()).add(other))
  }
  const circles = []
  const done = new Set()
  const walk = (folder, path) => {
    const start = path.indexOf(folder)
    if (start >= 0) return void circles.push([...path.slice(start), folder])
    if (done.has(folder)) return
    for (const next of reaches.get(folder) ?? []) walk(next, [...path, folder])
    done.add(folder)
  }
  for (const folder of reaches.keys()) walk(folder, [])
  return circles
}

const within = (folder, other) => `${folder}/`.startsWith(`${other}/`)
