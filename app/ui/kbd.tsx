/** A key, or several pressed together, as on the keyboard. */
export function Kbd({ keys }: { keys: readonly string[] }) {
  return (
    <span className="whitespace-nowrap">
      {keys.map((key, position) => (
        <span key={key}>
          {position > 0 && ' + '}
          <kbd className="kbd">{key}</kbd>
        </span>
      ))}
    </span>
  )
}
