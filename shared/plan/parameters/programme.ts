import { choiceParameter, numberParameter } from '@/shared/plan/parameter'

/** What is said of a programme when it is opened; the whole specification depends on it. */

export const productClass = choiceParameter({
  key: 'product-class',
  label: 'Product class',
  help: 'How much depends on the board: 1 general, 2 dedicated service, 3 high reliability (the classes the IPC standards use).',
  owner: 'design',
  options: [
    { value: '1', label: 'Class 1: general electronics' },
    { value: '2', label: 'Class 2: dedicated service' },
    { value: '3', label: 'Class 3: high reliability' },
  ],
})

export const alloyFamily = choiceParameter({
  key: 'alloy-family',
  label: 'Alloy family',
  help: 'Decides finishes, temperatures and what may be mixed.',
  owner: 'design',
  options: [
    { value: 'tin-lead', label: 'Tin-lead' },
    { value: 'lead-free', label: 'Lead-free' },
  ],
})

export const serviceYears = numberParameter({
  key: 'service-years',
  label: 'Service life',
  help: 'How long every joint must hold.',
  owner: 'design',
  unit: 'years',
  min: 0.5,
  max: 60,
})

export const environment = choiceParameter({
  key: 'environment',
  label: 'Environment in service',
  help: 'The environment categories of MIL-HDBK-217F; they scale the predicted failure rate.',
  owner: 'design',
  options: [
    { value: 'GB', label: 'Ground, benign' },
    { value: 'GF', label: 'Ground, fixed' },
    { value: 'GM', label: 'Ground, mobile' },
    { value: 'NS', label: 'Naval, sheltered' },
    { value: 'NU', label: 'Naval, unsheltered' },
    { value: 'AIC', label: 'Airborne, inhabited, cargo' },
    { value: 'AIF', label: 'Airborne, inhabited, fighter' },
    { value: 'AUC', label: 'Airborne, uninhabited, cargo' },
    { value: 'AUF', label: 'Airborne, uninhabited, fighter' },
    { value: 'ARW', label: 'Airborne, rotary wing' },
    { value: 'SF', label: 'Space, flight' },
    { value: 'MF', label: 'Missile, flight' },
    { value: 'ML', label: 'Missile, launch' },
    { value: 'CL', label: 'Cannon, launch' },
  ],
})

export const annualVolume = numberParameter({
  key: 'annual-volume',
  label: 'Boards per year',
  help: 'Sets how far sampling, tooling and rework costs are spread.',
  owner: 'production',
  unit: 'boards',
  min: 1,
  max: 10_000_000,
  whole: true,
})

/** Asked for when a programme is opened. */
export const ASKED_AT_OPENING = [productClass, alloyFamily, serviceYears, environment, annualVolume] as const
