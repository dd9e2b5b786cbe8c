import { saidObject, without, type Writes } from '../spoken-entry'

const openChangeNotice: Writes = ({ at, actorId, said }, rows) =>
  rows.insert('ChangeNotice', {
    id: said['id'],
    number: said['number'],
    title: said['title'],
    reason: said['reason'],
    costPerBoard: said['costPerBoard'],
    costOnce: said['costOnce'],
    openedById: actorId,
    openedAt: at,
    disposition: null,
    dispositionWhy: null,
    disposedById: null,
    disposedAt: null,
  })

const proposeChange: Writes = ({ at, actorId, said }, rows) => {
  const change = saidObject(said['change'])
  if (said['replaces'] !== null)
    rows.change('NoticeChange', { id: said['replaces'] }, { droppedById: actorId, droppedAt: at })
  rows.insert('NoticeChange', {
    id: said['id'],
    notice: said['notice'],
    kind: change['kind'],
    content: without(change, 'kind'),
    reason: said['reason'],
    authorId: actorId,
    at,
    droppedById: null,
    droppedAt: null,
  })
}

const dropChange: Writes = ({ at, actorId, said }, rows) =>
  rows.change('NoticeChange', { id: said['id'] }, { droppedById: actorId, droppedAt: at })

const answerChangeNotice: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.insert('NoticeAnswer', {
    id: said['id'],
    notice: said['notice'],
    department: said['department'],
    agrees: said['agrees'],
    reason: said['reason'],
    digest: said['digest'],
    personId: actorId,
    personName: actorName,
    at,
  })

const costChangeNotice: Writes = ({ said }, rows) =>
  rows.change('ChangeNotice', { number: said['notice'] }, saidObject(said['after']))

/** The changes themselves have entries of their own, before this one. */
const adoptChangeNotice: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'ChangeNotice',
    { number: said['notice'] },
    { disposition: 'adopted', dispositionWhy: said['reason'], disposedById: actorId, disposedAt: at },
  )

const closeChangeNotice: Writes = ({ at, actorId, said }, rows) =>
  rows.change(
    'ChangeNotice',
    { number: said['notice'] },
    {
      disposition: said['disposition'],
      dispositionWhy: said['reason'],
      disposedById: actorId,
      disposedAt: at,
    },
  )

/** What is written of change notices. */
export const CHANGE_WRITES = {
  'open-change-notice': openChangeNotice,
  'propose-change': proposeChange,
  'cost-change-notice': costChangeNotice,
  'drop-change': dropChange,
  'answer-change-notice': answerChangeNotice,
  'adopt-change-notice': adoptChangeNotice,
  'close-change-notice': closeChangeNotice,
} as const
