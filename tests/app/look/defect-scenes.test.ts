import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { defectFillet, GUIDE_JOINT } from '@/app/drawing/defect-fillet'
import { DEFECT_SCENES, SOUND_SCENE } from '@/app/drawing/defect-scene'
import { DefectSection } from '@/app/drawing/defect-section'
import { DEFECT_GUIDE } from '@/shared/inspection/defect-guide'
import { DEFECT_KINDS } from '@/shared/records/inspection'

const filletOf = (kind: (typeof DEFECT_KINDS)[number]) => defectFillet(DEFECT_SCENES[kind].fillet).meniscus

describe('the drawn guide to defects', () => {
  test.each(DEFECT_KINDS)('%s is drawn in numbers, and said in words', (kind) => {
    const picture = renderToStaticMarkup(
      createElement(DefectSection, { title: kind, scene: DEFECT_SCENES[kind] }),
    )
    expect(picture).not.toMatch(/NaN|undefined|Infinity/)
    for (const said of Object.values(DEFECT_GUIDE[kind])) expect(said).toMatch(/\.$/)
  })
  // Trade (from memory): a sound fillet is concave and wets to the edge; too little stops short of it; too much is
  // convex; a lead that is not wetted is met at more than 90° (IPC-A-610: wetting at 90° at most).
  test('the geometry shows what the words say', () => {
    const sound = defectFillet(SOUND_SCENE.fillet).meniscus
    expect(sound.shape).toBe('concave')
    expect(sound.footRadiusMm).toBeCloseTo(GUIDE_JOINT.landRadiusMm, 6)
    expect(filletOf('insufficient solder').footRadiusMm).toBeLessThan(GUIDE_JOINT.landRadiusMm)
    expect(filletOf('excess solder').shape).toBe('convex')
    expect(filletOf('excess solder').landAngleDeg).toBeGreaterThan(90)
    expect(filletOf('non-wetting').leadAngleDeg).toBeGreaterThan(90)
    expect(filletOf('cold joint').leadAngleDeg).toBeLessThanOrEqual(90)
  })
})
