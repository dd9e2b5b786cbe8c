import type { ItemDefinition } from './item'
import { contactGoldMin, contactNickelMin } from '@/shared/plan/limits/interconnection'
import {
  contactGold,
  contactNickel,
  contactsCovered,
  interconnection,
} from '@/shared/plan/parameters/interconnection'
import { edgeContacts } from '@/shared/rules/specification/edge-contacts'

export const interconnectionItem: ItemDefinition = {
  key: 'interconnection',
  stage: 'specification',
  title: 'Connection to the equipment',
  asks: 'Do pins or edge contacts join the board to the rest, and is the gold kept where no solder goes?',
  version: 1,
  owner: 'design',
  approvers: ['design', 'quality'],
  parameters: [interconnection, contactGold, contactNickel, contactsCovered],
  limits: [contactGoldMin, contactNickelMin],
  rules: [edgeContacts],
  evidence: [],
  cautions: [],
}
