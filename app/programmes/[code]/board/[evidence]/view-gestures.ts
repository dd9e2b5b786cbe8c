import { useEffect, useRef, type PointerEvent, type RefObject } from 'react'
import { around, moved, STEP, zoomed, type ViewBox } from './view-box'

/** Takes what the view becomes from what it was. */
export type SetView = (next: (before: ViewBox) => ViewBox) => void

/** A place that an address can name. */
interface FollowedMark {
  readonly id?: string
  readonly x: number
  readonly y: number
}

/** Brings the place that the address names into view, when this side has it. */
export function useFollowedMark(marks: readonly FollowedMark[], whole: ViewBox, setView: SetView): void {
  useEffect(() => {
    const follow = (): void => {
      const mark = marks.find(({ id }) => id !== undefined && `#${id}` === window.location.hash)
      if (mark) setView(() => around(whole, [mark.x, mark.y]))
    }
    follow()
    window.addEventListener('hashchange', follow)
    return () => window.removeEventListener('hashchange', follow)
  }, [marks, whole, setView])
}

/** The wheel zooms a picture that has the focus; else it moves the page, as anywhere. */
export function useWheel(picture: RefObject<HTMLDivElement | null>, whole: ViewBox, setView: SetView): void {
  useEffect(() => {
    const element = picture.current
    const wheel = (event: WheelEvent): void => {
      if (!element?.contains(document.activeElement)) return
      event.preventDefault()
      const at = onBoard(element, event)
      if (at) setView((view) => zoomed(view, whole, event.deltaY < 0 ? STEP : 1 / STEP, at))
    }
    element?.addEventListener('wheel', wheel, { passive: false })
    return () => element?.removeEventListener('wheel', wheel)
  }, [picture, whole, setView])
}

/** Where on the board a pointer is, mm with y downwards; undefined where the picture is not drawn. */
function onBoard(
  element: Element | null | undefined,
  { clientX, clientY }: { clientX: number; clientY: number },
): readonly [number, number] | undefined {
  const matrix = element?.querySelector('svg')?.getScreenCTM()
  if (!matrix) return undefined
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse())
  return [x, y]
}

/** Dragging moves what is seen: the place that was taken hold of stays under the pointer. */
export function useDrag(whole: ViewBox, setView: SetView) {
  const held = useRef<readonly [number, number] | undefined>(undefined)
  const letGo = (): void => {
    held.current = undefined
  }
  return {
    onPointerDown: (event: PointerEvent<HTMLDivElement>) => {
      if (event.button !== 0) return
      held.current = onBoard(event.currentTarget, event)
      event.currentTarget.setPointerCapture(event.pointerId)
    },
    onPointerMove: (event: PointerEvent<HTMLDivElement>) => {
      const at = held.current && onBoard(event.currentTarget, event)
      const from = held.current
      if (!at || !from) return
      setView((view) => moved(view, whole, [(from[0] - at[0]) / view.width, (from[1] - at[1]) / view.height]))
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
  }
}
