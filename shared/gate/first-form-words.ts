/*
 * Words that approvals of the first form covered, as they read then: what each
 * standard item asked, and the source that each limit's default named. They are
 * kept so that those approvals can be held against what stands today, and are
 * shown nowhere. Never change one; what is new has no place here.
 */

/** By item. */
export const FIRST_QUESTIONS: Readonly<Record<string, string>> = {
  'programme-frame': 'How long must it serve, where, how many are made, and in which alloy family?',
  documents:
    'Which documents, in which edition, is the board made to, and which of them rules where they differ?',
  'joint-budget':
    'How rarely may a joint fail in service or leave soldering defective, for the board to serve its life, and which swings of temperature must it outlive?',
  laminate: 'Which base material carries the holes, the soldering heat and the service temperature?',
  'holes-and-lands':
    'Does every lead enter its hole, leave solder a gap that it fills, and stand on a land that holds?',
  'joint-geometry': 'What fillet, how much solder and how much fill does a sound joint of this board have?',
  'conductors-and-spacings':
    'Does every conductor carry its current, stand off its neighbours for voltage and solder, and keep clear of the edges?',
  interconnection:
    'Do pins or edge contacts join the board to the rest, and is the gold kept where no solder goes?',
  'board-finish': 'What covers the copper where solder shall go, and how thick?',
  'lead-finish':
    'Is every lead coated with something that solder wets after its time in store, and that does no harm in the joint?',
  storage: 'How long and how warm may boards and components wait and still be solderable?',
  'solder-and-flux':
    'Which alloy and flux make the joints, do the metals go together, and does the residue stay?',
  'soldering-process':
    'By which process are the joints made, and is it right for their number, the heat they bear and the money?',
  'parts-evaluated':
    'Which boards, components and materials do the joints rest on, and has a lot of each been tested and accepted as ordered?',
  sampling:
    'How many pieces of each lot are tried, what may pass, and does a supplier’s history make the next sample larger or smaller?',
  'test-conditions':
    'Under which solder, flux, temperature and ageing is solderability tested, and what does the ageing stand for?',
  'board-solderability':
    'Do tracks and plated holes of every batch wet in time, and does solder rise in the holes?',
  'component-solderability': 'Do the leads of every component type take solder over their whole surface?',
  'laminate-heat':
    'Does the laminate as delivered stand the heat of soldering without blister or delamination?',
  'plating-measured':
    'Does the plating on tracks, in holes and on leads reach its specified thickness, and how surely do the readings show it?',
  instruments: 'Was every instrument in calibration on the day it was used, and can it tell good from bad?',
  'lots-released':
    'What was decided about each lot, is its result still fresh, and into which assemblies did it go?',
  'storage-and-handling':
    'Is every lot soldered while its evaluation still stands, kept and handled so that it stays solderable?',
  'people-trained':
    'Was everyone who soldered, prepared, tested or inspected trained for it, and in date on the day?',
  'flux-control': 'How is the flux in use kept the flux that was chosen, and how much thinner does it need?',
  'solder-bath':
    'Is the bath at its temperature and clean enough, when will it need exchange, and was it analysed in time?',
  wave: 'How warm does the board enter the wave, how long and how deep does it stay, and does the step harm its parts?',
  'thermal-profile': 'Does a measured board go through reflow as the solder and its parts need it?',
  irons:
    'Are the tips at their temperature, sound and grounded, and was each iron checked before it was used?',
  'process-charts':
    'Does the process stay level, has every signal a recorded cause and answer, and does its spread leave room?',
  'flux-removal':
    'Is what is left of the flux harmless: little enough in the extract, and insulating in damp heat?',
  'visual-inspection':
    'How many assemblies and joints were looked at, with what magnification, by whom, and did what they found stay level?',
  'electrical-test': 'How many boards pass at the first test, and which failures come from joints?',
  'defects-against-budget':
    'Does what was seen show the defect rate that the specification asks for, or how many more joints must be seen?',
  rework: 'How many joints were mended, how often was each heated, and what did it cost?',
  'further-proof':
    'Where the programme asks for it: what do joints show when cut open, and when cycled to the end?',
  'field-feedback': 'After release: do returns stay within the budget, and what do they teach?',
}

/** By limit. */
export const FIRST_DEFAULT_SOURCES: Readonly<Record<string, string>> = {
  'fatigue-share-failed-most': 'Share of joints that fatigue may take over the service life',
  'float-used-most':
    'Exposure times added up as shares of the time the laminate floats at that temperature or above',
  'glass-transition-margin-least':
    'A laminate is never worked or tested above its glass transition; 20 K keeps it clear',
  'bow-with-surface-mount-most':
    'IPC-6012B, 3.4.3, and IPC-A-610F, 10.2.7: 0.75 % with surface mount (secondary copies)',
  'bow-through-hole-most': 'IPC-6012B, 3.4.3, and IPC-A-610F, 10.2.7: 1.5 % otherwise (secondary copies)',
  'radial-clearance-least': 'Radial clearance of 0.10 to 0.25 mm between lead and plated hole',
  'radial-clearance-most': 'Radial clearance of 0.10 to 0.25 mm between lead and plated hole',
  'clearance-outside-most':
    'Share of a centred normal distribution outside three standard deviations: 2 700 per million',
  'flat-lead-gap-most':
    'MIL-STD-275: flat ribbon lead, nominal hole at most 0.028 in over the thickness (secondary copy)',
  'annular-ring-external-least': 'IPC-2221B, Table 9-2: external, supported (secondary copy)',
  'annular-ring-unsupported-least': 'IPC-2221, Table 9-2: external, unsupported',
  'aspect-ratio-most':
    'Coombs & Holden, Printed Circuits Handbook, 7th ed.: up to 3 routine, above 5 the barrel thins in the middle (secondary copy)',
  'grid-share-least': 'Holes on a grid of 2.54 mm or 0.5 mm (IEC 60097) for insertion and test fixtures',
  'conductor-rise-most': 'ECSS-Q-ST-70-12C Rev.1, 13.6.2: 10 K, better 5 K (secondary copy)',
  'bridging-gap-least':
    'MIL-PRF-55110G, A.3.5.7.1b: 0.020 in between exposed parallel conductors; Wilson, The Circuit Designer’s Companion, p. 61: 0.5 mm without resist (secondary copies)',
  'bridging-run-most':
    'Long parallel runs lie along the travel of the board; how long a run across may be, nobody states',
  'copper-to-edge-least':
    'Wilson, The Circuit Designer’s Companion, p. 68: 0.5 mm; ECSS-Q-ST-70-12C, Table 14-1, asks 0.7 mm of space boards (secondary copies)',
  'parts-to-edge-least':
    'Coombs & Holden, Printed Circuits Handbook, 7th ed.: 3 mm for the conveyor; ECSS-Q-ST-70-12C, 14.3.2c, asks 5 mm of space boards (secondary copies)',
  'contact-gold-least': 'MIL-STD-275 and MIL-G-45204: 50 to 100 microinches on contacts (secondary copy)',
  'contact-nickel-least': 'MIL-STD-275: low-stress nickel of at least 0.0002 in (secondary copy)',
  'tin-coating-least':
    'Tin or Sn60Pb40 of 5 to 10 µm for solderability; in line with ASTM B545 classes B and C',
  'tin-coating-most':
    'Tin or Sn60Pb40 of 5 to 10 µm for solderability; in line with ASTM B545 classes B and C',
  'lacquer-storage-most': 'Lacquer keeps copper solderable for short storage only',
  'brass-barrier-least':
    'At least 3 µm of copper or nickel under tin on brass; ASTM B545 asks 2.5 µm (from memory)',
  'gold-flash-most': 'A gold flash: up to 0.25 µm (10 microinches)',
  'nickel-under-flash-least': 'A gold flash is allowed over at least 5 µm of nickel or tin-nickel',
  'gold-fraction-most': 'IPC-D-279, 5.4.4: 3 % by mass; other readings 3 to 5 % (secondary copies)',
  'free-tin-least':
    'About 1 µm (40 microinches) of free tin or solder is where solderability becomes doubtful',
  'solidus-margin-least': 'Joints are kept well below the solidus; solder creeps at any service temperature',
  'insulation-with-residue-most': 'J-STD-004, surface insulation resistance of a flux: at least 100 MΩ',
  'hand-joints-most': 'About what two people solder in a year at 20 s a joint; more asks for a machine',
  'process-excess-most': 'Cost estimates of processes are good to about a tenth',
  'limiting-quality-most':
    'Near the 16.2 % of 13 pieces with none failing, the solderability sample of MIL-PRF-22684F 4.5.1.3.1.3',
  'sample-confidence-least': 'One-sided confidence of 95 %',
  'zero-acceptance-quality-most': 'MIL-STD-883 method 2003, LTPD 10 (22 leads, none failing)',
  'zero-acceptance-confidence-least': 'MIL-STD-883 method 2003, LTPD 10 (22 leads, none failing)',
  'test-temperature-tolerance-most': 'IEC 60068-2-20, Test Ta method 1: 235 ± 5 °C',
  'wetting-time-most': 'Rotary dip, boards at 235 °C in Sn60Pb40 with non-activated rosin',
  'hole-rise-least': 'J-STD-003, plated through holes: solder rises and wets the knee',
  'dip-coverage-least': 'MIL-STD-883 method 2003 (secondary copy)',
  'dewetting-drop-most': 'Dewetting tolerated on a wetting balance',
  'plating-coverage-least': 'One-sided tolerance bound, 95 % covered with 95 % confidence',
  'plating-confidence-least': 'One-sided tolerance bound, 95 % covered with 95 % confidence',
  'plating-capability-least': 'Two standard deviations between mean and minimum of a bought-in coating',
  'hole-copper-least': 'IPC-6012 class 3 and MIL-P-55110: 25 µm (20 µm for classes 1 and 2 of IPC-6012)',
  'calibration-notice-least': 'A month to send an instrument away',
  'gauge-share-most':
    'Measurement Systems Analysis, 4th edition (AIAG): under 10 % good, over 30 % not acceptable',
  'gauge-categories-least':
    'Measurement Systems Analysis, 4th edition (AIAG): five distinct categories or more',
  'reaffirmation-age-most':
    'MIL-STD-2000 5.4.4, solderability control, option 1: soldered within 120 days after a pass (as paraphrased)',
  'store-humidity-most': 'Boards and components stored at 60 % relative humidity at most',
  'training-valid-most': 'Workmanship certification of the trade runs for 24 months',
  'density-control-solids-least':
    'Low-solids flux, under 5 % by mass, is controlled by acid number: density is too blunt',
  'bath-temperature-tolerance-most': 'Bath held within 5 K of its setting',
  'bath-temperature-tin-lead-least': 'Tin-lead wave baths, 240 to 260 °C',
  'bath-temperature-tin-lead-most': 'Tin-lead wave baths, 240 to 260 °C',
  'bath-temperature-lead-free-least': 'Lead-free wave baths, 255 to 270 °C',
  'bath-temperature-lead-free-most': 'Lead-free wave baths, 255 to 270 °C',
  'bath-tin-lead-copper-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-gold-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-cadmium-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-zinc-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-aluminium-most': 'MIL-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-antimony-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-iron-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-arsenic-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-bismuth-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-silver-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-tin-lead-nickel-most': 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly',
  'bath-lead-free-copper-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-gold-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-cadmium-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-zinc-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-aluminium-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-antimony-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-iron-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-arsenic-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-bismuth-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-nickel-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-lead-free-lead-most': 'J-STD-001F, solder contamination limits, lead-free',
  'bath-tin-lead-sum-most': 'J-STD-001C / MIL-STD-2000A, solder contamination limits, combined total',
  'bath-tin-tolerance-most':
    'J-STD-001C / DOD-STD-2000A, solder contamination limits: tin within 1.5 % of nominal',
  'bath-analysis-interval-most': 'Monthly bath analysis; J-STD-001 lets the shop’s history set the interval',
  'preheat-tin-lead-least':
    'Upper side 80 to 110 °C before a tin-lead wave (printed charts go to 120 °C); the flux data sheet governs',
  'preheat-tin-lead-most':
    'Upper side 80 to 110 °C before a tin-lead wave (printed charts go to 120 °C); the flux data sheet governs',
  'preheat-lead-free-least':
    'Upper side 100 to 130 °C before a lead-free wave; water-soluble fluxes are run at 140 to 160 °C: the flux data sheet governs',
  'preheat-lead-free-most':
    'Upper side 100 to 130 °C before a lead-free wave; water-soluble fluxes are run at 140 to 160 °C: the flux data sheet governs',
  'preheat-rise-most': 'Preheat rises by 2 to 4 K/s at most; the stricter is taken',
  'thermal-step-most': 'Ceramic parts stand a step of 150 K at most, as their makers publish it',
  'thermal-step-chip-most':
    'Ceramic chip capacitors of size 1206 and under stand a step of 100 to 130 K, as their makers publish it',
  'wave-dwell-least':
    'Dwell in the main wave 2 to 4 s; figures of 5 to 10 s in print count both waves or legacy alloys',
  'wave-dwell-most':
    'Dwell in the main wave 2 to 4 s; figures of 5 to 10 s in print count both waves or legacy alloys',
  'wave-dwell-total-most':
    'Components stand 260 °C for 10 s at most in wave soldering, as their makers publish it',
  'wave-immersion-least': 'Board immersed by half to two thirds of its thickness',
  'wave-immersion-most': 'Board immersed by half to two thirds of its thickness',
  'conveyor-angle-least': 'Conveyor climbs by 4 to 7°',
  'conveyor-angle-most': 'Conveyor climbs by 4 to 7°',
  'reflow-peak-tin-lead-least':
    'Tin-lead reflow: 45 to 90 s above liquidus, peak 205 to 225 °C, rise of 3 K/s at most',
  'reflow-peak-tin-lead-most':
    'Tin-lead reflow: 45 to 90 s above liquidus, peak 205 to 225 °C, rise of 3 K/s at most',
  'reflow-peak-lead-free-least':
    'Reflow window for Sn96.5Ag3Cu0.5 as a component maker publishes it: soak 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most; others allow 60 to 100 s above liquidus',
  'reflow-peak-lead-free-most':
    'Reflow window for Sn96.5Ag3Cu0.5 as a component maker publishes it: soak 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most; others allow 60 to 100 s above liquidus',
  'above-liquidus-tin-lead-least':
    'Tin-lead reflow: 45 to 90 s above liquidus, peak 205 to 225 °C, rise of 3 K/s at most',
  'above-liquidus-tin-lead-most':
    'Tin-lead reflow: 45 to 90 s above liquidus, peak 205 to 225 °C, rise of 3 K/s at most',
  'above-liquidus-lead-free-least':
    'Reflow window for Sn96.5Ag3Cu0.5 as a component maker publishes it: soak 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most; others allow 60 to 100 s above liquidus',
  'above-liquidus-lead-free-most':
    'Reflow window for Sn96.5Ag3Cu0.5 as a component maker publishes it: soak 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most; others allow 60 to 100 s above liquidus',
  'soak-lead-free-least':
    'Reflow window for Sn96.5Ag3Cu0.5 as a component maker publishes it: soak 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most; others allow 60 to 100 s above liquidus',
  'soak-lead-free-most':
    'Reflow window for Sn96.5Ag3Cu0.5 as a component maker publishes it: soak 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most; others allow 60 to 100 s above liquidus',
  'profile-rise-most':
    'Reflow window for Sn96.5Ag3Cu0.5 as a component maker publishes it: soak 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most; others allow 60 to 100 s above liquidus',
  'profile-spread-most': 'Peaks across a board within 10 K of each other',
  'tip-ceiling-tin-lead-most':
    'TM 9-243: rosin carbonises above 600 °F (316 °C); ESA PSS-01-738, 3.5.7 ends at 320 °C',
  'tip-ceiling-lead-free-most':
    'Lead-free hand soldering at 340 to 385 °C; printed advice reaches 399 °C for heavy multilayers',
  'tip-accuracy-most': 'NASA-STD-8739.3 / MIL-STD-2000: idle tip within 10 °F (5.5 K) of its setting',
  'tip-hold-most':
    'J-STD-001, appendix A-2 b: a temperature-controlled iron holds its idle temperature within 5 K',
  'tip-check-interval-most': 'Tip temperature checked weekly; as-found readings may lengthen or shorten it',
  'tip-ground-most': 'DOD-STD-2000: 2 Ω from tip to ground',
  'tip-leakage-most': 'DOD-STD-2000: 2 mV at the tip (J-STD-001B gives no figure)',
  'tip-ground-interval-most':
    'Irons checked electrically once a year at least; the shop’s record may shorten it',
  'capability-least': 'Cpk of 1.33 and more: four standard deviations to the nearer limit',
  'ionic-residue-most': 'NASA-STD-8739.3, solvent extract: 1.55 µg/cm² (10.0 µg/in²); the strictest in use',
  'insulation-resistance-least': 'J-STD-004, surface insulation resistance: at least 100 MΩ',
  'inspected-joints-least': 'Where an assembly is inspected, every joint of it is',
  'magnification-most':
    'Joints are inspected at ten times at most; more only to settle a doubt already raised',
  'inspector-kappa-least':
    'Attribute studies of measurement systems analysis: kappa above 0.75 is good agreement',
  'first-pass-yield-least': 'First-pass yield of a settled assembly, 95 % and more',
  'budget-confidence-least': 'Demonstrations of quality at 95 % one-sided confidence',
  'rework-heats-most': 'A joint is heated three times at most in rework: barrels and lands tire',
  'section-fill-least': 'IPC-A-610, vertical fill of a plated hole: 75 % in classes 2 and 3',
  'section-void-most': 'Voids to a quarter of the section',
  'section-angle-most': 'IPC-A-610: wetting with a contact angle of 90° at most',
  'demonstration-confidence-least': 'Demonstrations of reliability at 90 % one-sided confidence',
}
