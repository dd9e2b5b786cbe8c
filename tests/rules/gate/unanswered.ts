/** What an action holds that was asked of a whole department, outside any study, and not answered yet. */
export const UNANSWERED = {
  askedOf: null,
  study: null,
  files: [],
  answer: null,
  answeredById: null,
  answeredByName: null,
  answeredAt: null,
  outcome: null,
  outcomeWhy: null,
}
