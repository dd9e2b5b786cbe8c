import { choiceParameter, flagParameter, numberParameter } from '@/shared/plan/parameter'

export const interconnection = choiceParameter({
  key: 'interconnection',
  label: 'Connection to the equipment',
  help: 'How the board joins the rest: pins soldered into it, or contacts of its own at the edge.',
  owner: 'design',
  options: [
    { value: 'pins', label: 'Termination pins or a soldered connector' },
    { value: 'edge', label: 'Edge contacts on the board' },
    { value: 'both', label: 'Both' },
  ],
})

export const contactGold = numberParameter({
  key: 'contact-gold',
  label: 'Gold on edge contacts',
  help: 'Least thickness as ordered.',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 20,
})

export const contactNickel = numberParameter({
  key: 'contact-nickel',
  label: 'Nickel under the contact gold',
  help: 'Least thickness as ordered.',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 50,
})

export const contactsCovered = flagParameter({
  key: 'contacts-covered',
  label: 'Contacts covered while soldering',
  help: 'Whether the edge contacts are kept from the solder by a mask or a carrier.',
  owner: 'production',
})
