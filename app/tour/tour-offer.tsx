import { tourAddress } from '@/app/addresses'
import { demoIsLoaded } from '@/lib/queries/demo-loaded'

/** The way to the tour, where the demo is loaded. */
export const TourOffer = async () =>
  (await demoIsLoaded()) && (
    <p>
      <a href={tourAddress()}>Tour of the demo in five steps</a>
    </p>
  )
