import type { KeyTold } from './keys'

/** Keys with what they do. */
export const KeyList = ({ keys }: { keys: readonly KeyTold[] }) => (
  <dl className="key-list">
    {keys.map(({ keys: pressed, does, where }) => (
      <div key={does}>
        <dt>
          {pressed.map((key) => (
            <kbd key={key}>{key}</kbd>
          ))}
        </dt>
        <dd>
          {does}
          {where && <span className="faint">, {where}</span>}
        </dd>
      </div>
    ))}
  </dl>
)
