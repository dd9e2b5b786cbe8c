'use client'
import { usePathname } from 'next/navigation'
import { nearbyPlaces } from '@/app/frame/nearby-places'
import { PlaceNav } from '@/app/ui/place-nav'

/** The ways on from a page that shows nothing, so that it is no dead end. */
export function Nearby() {
  const path = usePathname()
  return <PlaceNav {...nearbyPlaces(path)} current={path} />
}
