import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Bitmap, Frame } from './bitmap'
import { readPng } from './read-png'

/** The Debian package `gerbv`, which shares nothing with the project. */
const PROGRAM = 'gerbv'

export function otherRendererIsHere(): boolean {
  try {
    execFileSync(PROGRAM, ['--version'], { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

/** Longer numbers it does not read: a hundred-thousandth of an inch is a quarter of a micrometre. */
const DECIMALS = 5
const MM_PER_INCH = 25.4

/** A place as the other renderer can be told it, mm. */
export const tellable = (mm: number): number => Number((mm / MM_PER_INCH).toFixed(DECIMALS)) * MM_PER_INCH

/** A Gerber file as another program draws it, with what is half covered or more taken for covered. */
export function drawnByAnother(text: string, { left, bottom, width, height, pixelMm }: Frame): Bitmap {
  const folder = mkdtempSync(join(tmpdir(), 'liquidus-raster-'))
  const [file, picture] = [join(folder, 'layer.gbr'), join(folder, 'layer.png')]
  const inches = (mm: number): string => (mm / MM_PER_INCH).toFixed(DECIMALS)
  try {
    writeFileSync(file, text, 'latin1')
    execFileSync(
      PROGRAM,
      [
        ...['--export=png', '--antialias', '--border=0', '--background=#000000', '--foreground=#ffffffff'],
        `--dpi=${Math.round(MM_PER_INCH / pixelMm)}`,
        `--origin=${inches(left)}x${inches(bottom)}`,
        // Half a pixel more, for it rounds down.
        `--window_inch=${inches((width + 0.5) * pixelMm)}x${inches((height + 0.5) * pixelMm)}`,
        `--output=${picture}`,
        file,
      ],
      { stdio: 'ignore' },
    )
    return readPng(readFileSync(picture))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
