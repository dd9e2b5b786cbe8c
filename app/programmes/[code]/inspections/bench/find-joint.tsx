'use client'
import { useId, useState, type KeyboardEvent } from 'react'
import { Button } from '@/app/ui/button'
import { jointsFound, type PlanJoint } from '@/shared/board/plan-of-board'

interface FindJointProps {
  joints: readonly PlanJoint[]
  /** Which defect a joint is chosen for, from 1. */
  defect: number
  onChoose: (joint: PlanJoint) => void
}

const SHOWN = 12

/** The joints of the board by reference and pin, to be chosen without touching the plan. Enter takes the first. */
export function FindJoint({ joints, defect, onChoose }: FindJointProps) {
  const [search, setSearch] = useState('')
  const id = useId()
  const found = jointsFound(joints, search)
  const shown = search.trim() === '' ? [] : found.slice(0, SHOWN)
  const choose = (joint: PlanJoint) => {
    onChoose(joint)
    setSearch('')
  }
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key !== 'Enter' || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    if (shown[0]) choose(shown[0])
  }
  return (
    <div className="field bench-find">
      <label htmlFor={id}>Find a joint by reference and pin</label>
      <input
        id={id}
        className="control"
        type="search"
        value={search}
        onChange={(event) => setSearch(event.currentTarget.value)}
        onKeyDown={press}
        autoComplete="off"
        aria-describedby={`${id}-found`}
      />
      <p id={`${id}-found`} className="field-hint" role="status">
        {search.trim() === ''
          ? `${joints.length} joints of the board’s files. Enter takes the first that is found.`
          : `${found.length} found`}
      </p>
      {shown.length > 0 && (
        <ul className="bench-found" aria-label={`Joints for defect ${defect}`}>
          {shown.map((joint) => (
            <li key={`${joint.name} ${joint.xMm} ${joint.yMm}`}>
              <Button onClick={() => choose(joint)}>{joint.name}</Button>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
