import { PLACE_NAMES, type NonconformityPlace } from '@/shared/nonconformities/nonconformity'

/** "joint T1-3, lot B-7" */
export const placeInWords = (place: NonconformityPlace): string =>
  (Object.keys(PLACE_NAMES) as (keyof NonconformityPlace)[])
    .filter((where) => place[where])
    .map((where) => `${PLACE_NAMES[where].toLowerCase()} ${place[where]}`)
    .join(', ')
