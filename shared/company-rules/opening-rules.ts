import { findLimit, findParameter } from '@/shared/catalogue/standard-plan'
import { preferredByTheWorks } from '@/shared/plan/given-reasons'
import { requirementOfRule, type CompanyPreference, type CompanyRule } from './company-rule'

/**
 * The company rules in force, as a programme that is opened now lays them on its limits, by who stated them. One about a
 * limit that this version does not know is left out.
 */
export const rulesAtOpening = (rules: readonly CompanyRule[]) =>
  rules
    .filter(({ limit, withdrawn }) => withdrawn === null && findLimit(limit))
    .map((rule) => ({ rule: rule.id, ...requirementOfRule(rule), authorId: rule.stated.byId }))

/**
 * The preferred values in force that a programme which is opened now starts with: those of parameters that were not
 * given otherwise, as far as this version takes them.
 */
export const valuesAtOpening = (preferences: readonly CompanyPreference[], given: ReadonlySet<string>) =>
  preferences
    .filter(
      ({ parameter, value, withdrawn }) =>
        withdrawn === null &&
        !given.has(parameter) &&
        findParameter(parameter)?.schema.safeParse(value).success,
    )
    .map(({ id, parameter, value, reason }) => ({
      preference: id,
      parameter,
      value,
      reason: preferredByTheWorks(reason),
    }))
