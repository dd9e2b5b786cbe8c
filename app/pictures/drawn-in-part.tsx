/** Pictures of one sheet; a longer table is judged whole and drawn in part. */
export const MAX_DRAWN = 24

/** Says that more were judged than are drawn. */
export const DrawnInPart = ({ all }: { all: number }) =>
  all > MAX_DRAWN ? (
    <p>
      Of {all} kinds the first {MAX_DRAWN} are drawn; the findings judge every one.
    </p>
  ) : null
