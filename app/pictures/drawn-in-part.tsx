/** Pictures of one sheet; a longer table is judged whole and drawn in part. */
export const MOST_DRAWN = 24

/** Says that more were judged than are drawn. */
export const DrawnInPart = ({ all }: { all: number }) =>
  all > MOST_DRAWN ? (
    <p>
      Of {all} kinds the first {MOST_DRAWN} are drawn; the findings judge every one.
    </p>
  ) : null
