import type { DegreeDayMethod } from '../../shared/season/degree-day.ts';
import type { SourcedRow } from '../rows.ts';

type OneDay = { method: DegreeDayMethod; base: number; cap?: number; max: number; min: number };

const zalom = { from: 'Zalom et al. 1983, University of California leaflet 21373, table 7, single sine, lower 55 F, upper 90 F', basis: 'recomputed' } as const;
const mcmaster = { from: 'McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300, table 1, base 0 C', basis: 'published' } as const;

export const oneDay: SourcedRow<OneDay, { degreeDays: number; within: number }>[] = [
  { case: 'sine 96 to 110 F', given: { method: 'sine', base: 55, cap: 90, max: 110, min: 96 }, expect: { degreeDays: 35, within: 0.5 }, ...zalom },
  { case: 'sine 45 to 54 F', given: { method: 'sine', base: 55, cap: 90, max: 54, min: 45 }, expect: { degreeDays: 0, within: 0 }, ...zalom },
  { case: 'sine 60 to 80 F', given: { method: 'sine', base: 55, cap: 90, max: 80, min: 60 }, expect: { degreeDays: 15, within: 0.5 }, ...zalom },
  { case: 'sine 75 to 88 F', given: { method: 'sine', base: 55, cap: 90, max: 88, min: 75 }, expect: { degreeDays: 26.5, within: 0.05 }, ...zalom },
  { case: 'sine 50 to 82 F', given: { method: 'sine', base: 55, cap: 90, max: 82, min: 50 }, expect: { degreeDays: 11.85, within: 0.005 }, ...zalom },
  { case: 'sine 45 to 70 F', given: { method: 'sine', base: 55, cap: 90, max: 70, min: 45 }, expect: { degreeDays: 5.31, within: 0.005 }, ...zalom },
  { case: 'sine 75 to 95 F', given: { method: 'sine', base: 55, cap: 90, max: 95, min: 75 }, expect: { degreeDays: 28.91, within: 0.005 }, ...zalom },
  { case: 'sine 48 to 95 F', given: { method: 'sine', base: 55, cap: 90, max: 95, min: 48 }, expect: { degreeDays: 16.96, within: 0.005 }, ...zalom },
  { case: 'their method 1, 10 to 20 C', given: { method: 'simple', base: 0, max: 20, min: 10 }, expect: { degreeDays: 15, within: 0 }, ...mcmaster },
  { case: 'their method 2, 10 to 20 C', given: { method: 'floored', base: 0, max: 20, min: 10 }, expect: { degreeDays: 15, within: 0 }, ...mcmaster },
  { case: 'their method 1, -2 to 8 C', given: { method: 'simple', base: 0, max: 8, min: -2 }, expect: { degreeDays: 3, within: 0 }, ...mcmaster },
  { case: 'their method 2, -2 to 8 C', given: { method: 'floored', base: 0, max: 8, min: -2 }, expect: { degreeDays: 4, within: 0 }, ...mcmaster },
  { case: 'their method 1, -5 to 5 C', given: { method: 'simple', base: 0, max: 5, min: -5 }, expect: { degreeDays: 0, within: 0 }, ...mcmaster },
  { case: 'their method 2, -5 to 5 C', given: { method: 'floored', base: 0, max: 5, min: -5 }, expect: { degreeDays: 2.5, within: 0 }, ...mcmaster },
  { case: 'their method 1, -2 to 10 C', given: { method: 'simple', base: 0, max: 10, min: -2 }, expect: { degreeDays: 4, within: 0 }, ...mcmaster },
  { case: 'their method 2, -2 to 10 C', given: { method: 'floored', base: 0, max: 10, min: -2 }, expect: { degreeDays: 5, within: 0 }, ...mcmaster },
  { case: 'simple, 43 to 63 F', given: { method: 'simple', base: 50, max: 63, min: 43 }, expect: { degreeDays: 3, within: 0 }, from: 'an Ohio extension column', basis: 'published' },
  { case: 'modified, 40 to 54 F', given: { method: 'modified', base: 50, cap: 86, max: 54, min: 40 }, expect: { degreeDays: 2, within: 0 }, from: 'a Maine extension page', basis: 'published' },
  { case: 'the same day, simple', given: { method: 'simple', base: 50, max: 54, min: 40 }, expect: { degreeDays: 0, within: 0 }, from: 'derived', basis: 'derived' },
  { case: 'the same day, sine', given: { method: 'sine', base: 50, max: 54, min: 40 }, expect: { degreeDays: 0.94, within: 0.005 }, from: 'computed independently', basis: 'recomputed' },
  { case: 'modified, above the cap', given: { method: 'modified', base: 50, cap: 86, max: 100, min: 90 }, expect: { degreeDays: 36, within: 0 }, from: 'derived', basis: 'derived' },
  { case: 'maximum, 43 F', given: { method: 'maximum', base: 43, max: 55, min: 30 }, expect: { degreeDays: 12, within: 0 }, from: 'derived; the method of an apple page of Washington State University', basis: 'derived' },
];

const spreadFormula = { from: 's (density + z share), computed by an independent program; base, spread and mean as given', basis: 'recomputed' } as const;

export const spreads: SourcedRow<{ base: number; spread: number; mean: number }, { degreeDays: number }>[] = [
  { case: 'base 50, spread 9, mean 35', given: { base: 50, spread: 9, mean: 35 }, expect: { degreeDays: 0.1784 }, ...spreadFormula },
  { case: 'base 50, spread 9, mean 40', given: { base: 50, spread: 9, mean: 40 }, expect: { degreeDays: 0.6041 }, ...spreadFormula },
  { case: 'base 50, spread 9, mean 45', given: { base: 50, spread: 9, mean: 45 }, expect: { degreeDays: 1.6307 }, ...spreadFormula },
  { case: 'base 50, spread 9, mean 50', given: { base: 50, spread: 9, mean: 50 }, expect: { degreeDays: 3.5905 }, ...spreadFormula },
  { case: 'base 50, spread 9, mean 55', given: { base: 50, spread: 9, mean: 55 }, expect: { degreeDays: 6.6307 }, ...spreadFormula },
  { case: 'base 50, spread 9, mean 60', given: { base: 50, spread: 9, mean: 60 }, expect: { degreeDays: 10.6041 }, ...spreadFormula },
  { case: 'base 50, spread 9, mean 70', given: { base: 50, spread: 9, mean: 70 }, expect: { degreeDays: 20.0413 }, ...spreadFormula },
  { case: 'base 40, spread 7, mean 25', given: { base: 40, spread: 7, mean: 25 }, expect: { degreeDays: 0.0402 }, ...spreadFormula },
  { case: 'base 40, spread 7, mean 40', given: { base: 40, spread: 7, mean: 40 }, expect: { degreeDays: 2.7926 }, ...spreadFormula },
  { case: 'base 40, spread 7, mean 50', given: { base: 40, spread: 7, mean: 50 }, expect: { degreeDays: 10.2409 }, ...spreadFormula },
  { case: 'base 10, spread 2.5, mean 4', given: { base: 10, spread: 2.5, mean: 4 }, expect: { degreeDays: 0.0068 }, ...spreadFormula },
  { case: 'base 10, spread 2.5, mean 8', given: { base: 10, spread: 2.5, mean: 8 }, expect: { degreeDays: 0.3005 }, ...spreadFormula },
  { case: 'base 10, spread 2.5, mean 10', given: { base: 10, spread: 2.5, mean: 10 }, expect: { degreeDays: 0.9974 }, ...spreadFormula },
  { case: 'base 10, spread 2.5, mean 12', given: { base: 10, spread: 2.5, mean: 12 }, expect: { degreeDays: 2.3005 }, ...spreadFormula },
  { case: 'base 10, spread 2.5, mean 16', given: { base: 10, spread: 2.5, mean: 16 }, expect: { degreeDays: 6.0068 }, ...spreadFormula },
];

/** Values on days of a common year, counted from 1. */
export const curves: SourcedRow<{ means: number[]; days: number[] }, { values: number[]; within: number }>[] = [
  { case: 'December with the sign of the printed demo', given: { means: [-6.77, -4.33, 1.52, 8.35, 14.74, 20.29, 23.22, 22.17, 16.94, 10.35, 3.08, 4.29], days: [1, 15, 32, 46, 60, 74, 91, 105, 121, 135, 152, 166, 182, 196, 213, 227, 244, 258, 274, 288, 305, 319, 335, 349, 365] }, expect: { values: [-0.92, -7.6, -8.58, -3.98, -0.36, 1.2, 4.3, 8.35, 12.14, 14.49, 17.76, 20.42, 22.22, 23.22, 23.9, 22.66, 19.15, 16.86, 14.93, 11.08, 4.36, 2.16, 4.96, 5.66, -0.38], within: 0.006 }, from: 'disputed: demo_1yr_epstein.txt of the public program pjbartlein/mp-interp, after Epstein 1991; December is +4.29 there and -4.29 in its other example', basis: 'published' },
  { case: 'Madison, Wisconsin (reanalysis)', given: { means: [-6.77, -4.33, 1.52, 8.35, 14.74, 20.29, 23.22, 22.17, 16.94, 10.35, 3.08, -4.29], days: [1, 15, 32, 46, 60, 74, 91, 105, 121, 135, 152, 166, 182, 196, 213, 227, 244, 258, 274, 288, 305, 319, 335, 349, 365] }, expect: { values: [-6.584, -6.979, -6.157, -4.407, -1.744, 1.263, 5.128, 8.267, 11.692, 14.559, 17.892, 20.329, 22.372, 23.345, 23.437, 22.476, 20.008, 17.091, 13.505, 10.575, 6.891, 3.272, -1.167, -4.36, -6.509], within: 0.002 }, from: 'Epstein 1991, J. Climate 4:365-368, computed independently; means from Fig15.txt of pjbartlein/PaleoCalAdjust', basis: 'recomputed' },
  { case: 'Australia (reanalysis), southern hemisphere', given: { means: [25.32, 24.93, 22.63, 19.73, 16.17, 13.0, 12.38, 14.04, 17.36, 19.78, 22.52, 24.04], days: [1, 15, 32, 46, 60, 74, 91, 105, 121, 135, 152, 166, 182, 196, 213, 227, 244, 258, 274, 288, 305, 319, 335, 349, 365] }, expect: { values: [24.709, 25.377, 25.589, 24.979, 23.897, 22.737, 21.196, 19.808, 18.047, 16.306, 14.172, 12.892, 12.303, 12.297, 12.778, 13.828, 15.808, 17.409, 18.659, 19.631, 21.224, 22.58, 23.517, 23.973, 24.658], within: 0.002 }, from: 'Epstein 1991, J. Climate 4:365-368, computed independently; means from Fig15.txt of pjbartlein/PaleoCalAdjust', basis: 'recomputed' },
  { case: 'Wooster Exp Stn OH daily maximum 1981-2010', given: { means: [34.5, 38.1, 48.0, 61.0, 70.9, 79.5, 83.1, 81.7, 74.6, 62.7, 50.7, 38.4], days: [1, 15, 32, 46, 60, 74, 91, 105, 121, 135, 152, 166, 182, 196, 213, 227, 244, 258, 274, 288, 305, 319, 335, 349, 365] }, expect: { values: [34.564, 34.186, 35.572, 37.929, 41.96, 47.392, 55.091, 61.028, 66.467, 70.58, 75.688, 79.641, 82.504, 83.28, 82.958, 82.034, 79.355, 75.043, 68.532, 62.991, 56.757, 51.056, 43.761, 38.255, 34.674], within: 0.002 }, from: 'Epstein 1991, J. Climate 4:365-368, computed independently; means from NOAA normals 1981-2010', basis: 'recomputed' },
  { case: 'Wooster Exp Stn OH daily minimum 1981-2010', given: { means: [18.2, 19.9, 27.3, 37.5, 47.3, 56.5, 60.2, 58.4, 50.8, 40.1, 32.1, 22.8], days: [1, 15, 32, 46, 60, 74, 91, 105, 121, 135, 152, 166, 182, 196, 213, 227, 244, 258, 274, 288, 305, 319, 335, 349, 365] }, expect: { values: [19.095, 17.982, 18.254, 19.714, 22.735, 26.851, 32.645, 37.39, 42.495, 46.942, 52.516, 56.656, 59.608, 60.407, 59.952, 58.766, 55.708, 51.18, 44.852, 40.147, 35.929, 32.429, 27.318, 22.812, 19.239], within: 0.002 }, from: 'Epstein 1991, J. Climate 4:365-368, computed independently; means from NOAA normals 1981-2010', basis: 'recomputed' },
  { case: 'Thermal, California, daily maximum', given: { means: [71.0, 74.3, 81.1, 87.2, 94.6, 103.0, 106.9, 106.2, 101.5, 90.9, 78.7, 69.3], days: [289, 290, 291, 292] }, expect: { values: [90.9, 90.5, 90.2, 89.8], within: 0.06 }, from: 'NOAA monthly and daily normals 1991-2020, station USW00003104', basis: 'published' },
  { case: 'Thermal, California, daily minimum', given: { means: [39.0, 42.9, 49.0, 54.8, 62.9, 69.1, 75.6, 74.9, 68.2, 56.9, 44.7, 37.7], days: [289, 290, 291, 292] }, expect: { values: [56.9, 56.5, 56.1, 55.7], within: 0.06 }, from: 'NOAA monthly and daily normals 1991-2020, station USW00003104', basis: 'published' },
];

const noaa = { from: 'NOAA 1981-2010 normals: monthly maximum and minimum, annual growing degree-days base 50 and 40 F; simple without spread computed independently', basis: 'published' } as const;

/** Published sums of a year from daily records, base 50 and base 40 F, and the spread of the station's state. */
export const stations: SourcedRow<{ maxByMonth: number[]; minByMonth: number[]; stateSpread: number }, { base50: number; base40: number; simpleAlone: number }>[] = [
  { case: 'MINNEAPOLIS/ST PAUL AP, MN', given: { maxByMonth: [23.7, 28.9, 41.3, 57.8, 69.4, 78.8, 83.4, 80.5, 71.7, 58.0, 41.2, 27.1], minByMonth: [7.5, 12.8, 24.3, 37.2, 48.9, 58.8, 64.1, 61.8, 52.4, 39.7, 26.2, 12.3], stateSpread: 8.5 }, expect: { base50: 2831, base40: 4796, simpleAlone: 2658 }, ...noaa },
  { case: 'ALBANY AP, NY', given: { maxByMonth: [30.6, 34.6, 44.4, 58.3, 69.4, 77.9, 82.3, 80.4, 72.2, 59.8, 47.9, 35.8], minByMonth: [14.5, 17.3, 25.7, 37.3, 47.1, 56.5, 61.4, 59.9, 51.6, 39.6, 31.5, 21.2], stateSpread: 7.9 }, expect: { base50: 2649, base40: 4708, simpleAlone: 2487 }, ...noaa },
  { case: 'WOOSTER EXP STN, OH', given: { maxByMonth: [34.5, 38.1, 48.0, 61.0, 70.9, 79.5, 83.1, 81.7, 74.6, 62.7, 50.7, 38.4], minByMonth: [18.2, 19.9, 27.3, 37.5, 47.3, 56.5, 60.2, 58.4, 50.8, 40.1, 32.1, 22.8], stateSpread: 9.0 }, expect: { base50: 2816, base40: 4994, simpleAlone: 2589 }, ...noaa },
  { case: 'ATLANTA HARTSFIELD INTL AP, GA', given: { maxByMonth: [52.3, 56.6, 64.6, 72.5, 79.9, 86.4, 89.1, 88.1, 82.2, 72.7, 63.6, 54.0], minByMonth: [34.3, 37.7, 44.1, 51.5, 60.3, 68.2, 71.3, 70.7, 64.8, 54.0, 44.5, 36.5], stateSpread: 8.6 }, expect: { base50: 5319, base40: 8404, simpleAlone: 5026 }, ...noaa },
  { case: 'PHOENIX SKY HARBOR INTL AP, AZ', given: { maxByMonth: [67.2, 70.7, 76.9, 85.2, 94.8, 103.9, 106.1, 104.4, 99.8, 88.5, 75.5, 66.0], minByMonth: [45.6, 48.7, 53.5, 60.2, 69.4, 77.7, 83.5, 82.7, 76.9, 64.8, 52.7, 44.8], stateSpread: 5.9 }, expect: { base50: 9176, base40: 12797, simpleAlone: 9147 }, ...noaa },
  { case: 'SEATTLE TACOMA INTL AP, WA', given: { maxByMonth: [47.2, 49.9, 53.7, 58.5, 64.7, 69.9, 75.8, 76.3, 70.5, 59.7, 50.9, 45.7], minByMonth: [36.9, 36.9, 39.3, 42.2, 47.3, 51.9, 55.6, 55.9, 52.1, 45.8, 40.0, 35.6], stateSpread: 5.6 }, expect: { base50: 2063, base40: 4770, simpleAlone: 1949 }, ...noaa },
];

const england = { from: 'daily Central England Temperature 1981-2010, Met Office Hadley Centre; means of the years computed independently', basis: 'recomputed' } as const;
const melbourne = { from: 'daily Melbourne 1981-1990, Australian Bureau of Meteorology; means of the years computed independently', basis: 'recomputed' } as const;

export const places = {
  england: { maxByMonth: [7.15, 7.36, 10.07, 12.72, 16.17, 18.91, 21.23, 20.85, 18.05, 14.08, 10.05, 7.32], minByMonth: [1.73, 1.4, 3.1, 4.31, 7.15, 10.04, 12.19, 11.97, 10.03, 7.3, 4.23, 1.95] },
  melbourne: { maxByMonth: [25.6, 26.2, 24.22, 20.89, 17.45, 14.24, 13.65, 15.3, 17.25, 19.72, 22.22, 23.82], minByMonth: [15.03, 15.38, 14.57, 12.09, 9.87, 7.28, 6.69, 7.89, 8.98, 10.31, 12.48, 13.86] },
};

/**
 * Day of the count (1 is the first) on which a sum in C-days is reached: mean of the real years, and from normals without spread by an
 * independent program.
 */
export const reached: SourcedRow<{ place: 'england' | 'melbourne'; from: string; base: number; method: DegreeDayMethod; spread: number; sum: number }, { meanOfYears: number; alone: number; withSpread: number }>[] = [
  { case: 'england, 5C, simple, 50', given: { place: 'england', from: '01-01', base: 5, method: 'simple', spread: 3.01, sum: 50 }, expect: { meanOfYears: 55.7, alone: 91, withSpread: 55 }, ...england },
  { case: 'england, 5C, simple, 100', given: { place: 'england', from: '01-01', base: 5, method: 'simple', spread: 3.01, sum: 100 }, expect: { meanOfYears: 82.5, alone: 107, withSpread: 82 }, ...england },
  { case: 'england, 5C, simple, 200', given: { place: 'england', from: '01-01', base: 5, method: 'simple', spread: 3.01, sum: 200 }, expect: { meanOfYears: 112.8, alone: 129, withSpread: 113 }, ...england },
  { case: 'england, 5C, simple, 300', given: { place: 'england', from: '01-01', base: 5, method: 'simple', spread: 3.01, sum: 300 }, expect: { meanOfYears: 132.3, alone: 144, withSpread: 132 }, ...england },
  { case: 'england, 5C, simple, 500', given: { place: 'england', from: '01-01', base: 5, method: 'simple', spread: 3.01, sum: 500 }, expect: { meanOfYears: 158.8, alone: 167, withSpread: 158 }, ...england },
  { case: 'england, 5C, sine, 50', given: { place: 'england', from: '01-01', base: 5, method: 'sine', spread: 3.01, sum: 50 }, expect: { meanOfYears: 44.2, alone: 68, withSpread: 44 }, ...england },
  { case: 'england, 5C, sine, 100', given: { place: 'england', from: '01-01', base: 5, method: 'sine', spread: 3.01, sum: 100 }, expect: { meanOfYears: 73.8, alone: 90, withSpread: 74 }, ...england },
  { case: 'england, 5C, sine, 200', given: { place: 'england', from: '01-01', base: 5, method: 'sine', spread: 3.01, sum: 200 }, expect: { meanOfYears: 104.0, alone: 119, withSpread: 105 }, ...england },
  { case: 'england, 5C, sine, 300', given: { place: 'england', from: '01-01', base: 5, method: 'sine', spread: 3.01, sum: 300 }, expect: { meanOfYears: 126.6, alone: 136, withSpread: 126 }, ...england },
  { case: 'england, 5C, sine, 500', given: { place: 'england', from: '01-01', base: 5, method: 'sine', spread: 3.01, sum: 500 }, expect: { meanOfYears: 154.0, alone: 161, withSpread: 154 }, ...england },
  { case: 'england, 5C, floored, 50', given: { place: 'england', from: '01-01', base: 5, method: 'floored', spread: 3.01, sum: 50 }, expect: { meanOfYears: 37.0, alone: 48, withSpread: 37 }, ...england },
  { case: 'england, 5C, floored, 100', given: { place: 'england', from: '01-01', base: 5, method: 'floored', spread: 3.01, sum: 100 }, expect: { meanOfYears: 65.1, alone: 75, withSpread: 67 }, ...england },
  { case: 'england, 5C, floored, 200', given: { place: 'england', from: '01-01', base: 5, method: 'floored', spread: 3.01, sum: 200 }, expect: { meanOfYears: 96.8, alone: 106, withSpread: 98 }, ...england },
  { case: 'england, 5C, floored, 300', given: { place: 'england', from: '01-01', base: 5, method: 'floored', spread: 3.01, sum: 300 }, expect: { meanOfYears: 119.6, alone: 128, withSpread: 120 }, ...england },
  { case: 'england, 5C, floored, 500', given: { place: 'england', from: '01-01', base: 5, method: 'floored', spread: 3.01, sum: 500 }, expect: { meanOfYears: 149.2, alone: 155, withSpread: 150 }, ...england },
  { case: 'england, 10C, simple, 25', given: { place: 'england', from: '01-01', base: 10, method: 'simple', spread: 2.52, sum: 25 }, expect: { meanOfYears: 127.7, alone: 142, withSpread: 127 }, ...england },
  { case: 'england, 10C, simple, 50', given: { place: 'england', from: '01-01', base: 10, method: 'simple', spread: 2.52, sum: 50 }, expect: { meanOfYears: 139.1, alone: 151, withSpread: 140 }, ...england },
  { case: 'england, 10C, simple, 100', given: { place: 'england', from: '01-01', base: 10, method: 'simple', spread: 2.52, sum: 100 }, expect: { meanOfYears: 157.0, alone: 164, withSpread: 156 }, ...england },
  { case: 'england, 10C, simple, 200', given: { place: 'england', from: '01-01', base: 10, method: 'simple', spread: 2.52, sum: 200 }, expect: { meanOfYears: 177.9, alone: 184, withSpread: 178 }, ...england },
  { case: 'england, 10C, simple, 400', given: { place: 'england', from: '01-01', base: 10, method: 'simple', spread: 2.52, sum: 400 }, expect: { meanOfYears: 210.2, alone: 213, withSpread: 209 }, ...england },
  { case: 'england, 10C, sine, 25', given: { place: 'england', from: '01-01', base: 10, method: 'sine', spread: 2.52, sum: 25 }, expect: { meanOfYears: 105.0, alone: 122, withSpread: 106 }, ...england },
  { case: 'england, 10C, sine, 50', given: { place: 'england', from: '01-01', base: 10, method: 'sine', spread: 2.52, sum: 50 }, expect: { meanOfYears: 123.9, alone: 135, withSpread: 125 }, ...england },
  { case: 'england, 10C, sine, 100', given: { place: 'england', from: '01-01', base: 10, method: 'sine', spread: 2.52, sum: 100 }, expect: { meanOfYears: 142.9, alone: 152, withSpread: 144 }, ...england },
  { case: 'england, 10C, sine, 200', given: { place: 'england', from: '01-01', base: 10, method: 'sine', spread: 2.52, sum: 200 }, expect: { meanOfYears: 168.6, alone: 176, withSpread: 169 }, ...england },
  { case: 'england, 10C, sine, 400', given: { place: 'england', from: '01-01', base: 10, method: 'sine', spread: 2.52, sum: 400 }, expect: { meanOfYears: 202.5, alone: 207, withSpread: 202 }, ...england },
  { case: 'england, 10C, floored, 25', given: { place: 'england', from: '01-01', base: 10, method: 'floored', spread: 2.52, sum: 25 }, expect: { meanOfYears: 90.6, alone: 108, withSpread: 93 }, ...england },
  { case: 'england, 10C, floored, 50', given: { place: 'england', from: '01-01', base: 10, method: 'floored', spread: 2.52, sum: 50 }, expect: { meanOfYears: 108.5, alone: 122, withSpread: 112 }, ...england },
  { case: 'england, 10C, floored, 100', given: { place: 'england', from: '01-01', base: 10, method: 'floored', spread: 2.52, sum: 100 }, expect: { meanOfYears: 131.2, alone: 140, withSpread: 133 }, ...england },
  { case: 'england, 10C, floored, 200', given: { place: 'england', from: '01-01', base: 10, method: 'floored', spread: 2.52, sum: 200 }, expect: { meanOfYears: 158.9, alone: 165, withSpread: 159 }, ...england },
  { case: 'england, 10C, floored, 400', given: { place: 'england', from: '01-01', base: 10, method: 'floored', spread: 2.52, sum: 400 }, expect: { meanOfYears: 194.3, alone: 200, withSpread: 195 }, ...england },
  { case: 'melbourne, 10C, simple, 25', given: { place: 'melbourne', from: '07-01', base: 10, method: 'simple', spread: 1.83, sum: 25 }, expect: { meanOfYears: 32.1, alone: 47, withSpread: 31 }, ...melbourne },
  { case: 'melbourne, 10C, simple, 50', given: { place: 'melbourne', from: '07-01', base: 10, method: 'simple', spread: 1.83, sum: 50 }, expect: { meanOfYears: 49.7, alone: 60, withSpread: 48 }, ...melbourne },
  { case: 'melbourne, 10C, simple, 100', given: { place: 'melbourne', from: '07-01', base: 10, method: 'simple', spread: 1.83, sum: 100 }, expect: { meanOfYears: 69.9, alone: 78, withSpread: 69 }, ...melbourne },
  { case: 'melbourne, 10C, simple, 200', given: { place: 'melbourne', from: '07-01', base: 10, method: 'simple', spread: 1.83, sum: 200 }, expect: { meanOfYears: 98.1, alone: 104, withSpread: 98 }, ...melbourne },
  { case: 'melbourne, 10C, simple, 400', given: { place: 'melbourne', from: '07-01', base: 10, method: 'simple', spread: 1.83, sum: 400 }, expect: { meanOfYears: 133.9, alone: 137, withSpread: 134 }, ...melbourne },
  { case: 'melbourne, 10C, sine, 25', given: { place: 'melbourne', from: '07-01', base: 10, method: 'sine', spread: 1.83, sum: 25 }, expect: { meanOfYears: 21.1, alone: 23, withSpread: 20 }, ...melbourne },
  { case: 'melbourne, 10C, sine, 50', given: { place: 'melbourne', from: '07-01', base: 10, method: 'sine', spread: 1.83, sum: 50 }, expect: { meanOfYears: 35.8, alone: 39, withSpread: 36 }, ...melbourne },
  { case: 'melbourne, 10C, sine, 100', given: { place: 'melbourne', from: '07-01', base: 10, method: 'sine', spread: 1.83, sum: 100 }, expect: { meanOfYears: 58.3, alone: 62, withSpread: 58 }, ...melbourne },
  { case: 'melbourne, 10C, sine, 200', given: { place: 'melbourne', from: '07-01', base: 10, method: 'sine', spread: 1.83, sum: 200 }, expect: { meanOfYears: 88.2, alone: 92, withSpread: 88 }, ...melbourne },
  { case: 'melbourne, 10C, sine, 400', given: { place: 'melbourne', from: '07-01', base: 10, method: 'sine', spread: 1.83, sum: 400 }, expect: { meanOfYears: 126.9, alone: 130, withSpread: 127 }, ...melbourne },
  { case: 'melbourne, 10C, floored, 25', given: { place: 'melbourne', from: '07-01', base: 10, method: 'floored', spread: 1.83, sum: 25 }, expect: { meanOfYears: 15.4, alone: 15, withSpread: 15 }, ...melbourne },
  { case: 'melbourne, 10C, floored, 50', given: { place: 'melbourne', from: '07-01', base: 10, method: 'floored', spread: 1.83, sum: 50 }, expect: { meanOfYears: 28.0, alone: 28, withSpread: 28 }, ...melbourne },
  { case: 'melbourne, 10C, floored, 100', given: { place: 'melbourne', from: '07-01', base: 10, method: 'floored', spread: 1.83, sum: 100 }, expect: { meanOfYears: 49.6, alone: 49, withSpread: 49 }, ...melbourne },
  { case: 'melbourne, 10C, floored, 200', given: { place: 'melbourne', from: '07-01', base: 10, method: 'floored', spread: 1.83, sum: 200 }, expect: { meanOfYears: 79.2, alone: 80, withSpread: 79 }, ...melbourne },
  { case: 'melbourne, 10C, floored, 400', given: { place: 'melbourne', from: '07-01', base: 10, method: 'floored', spread: 1.83, sum: 400 }, expect: { meanOfYears: 119.6, alone: 123, withSpread: 120 }, ...melbourne },
];

export const wenatchee = { maxByMonth: [36.9, 44.3, 55.5, 64.1, 72.9, 79.8, 88.4, 87.7, 78.9, 63.0, 46.1, 34.4], minByMonth: [24.4, 26.4, 32.0, 37.8, 45.4, 52.8, 57.1, 55.9, 46.3, 35.9, 29.3, 22.6] };
export const wooster = { maxByMonth: [34.5, 38.1, 48.0, 61.0, 70.9, 79.5, 83.1, 81.7, 74.6, 62.7, 50.7, 38.4], minByMonth: [18.2, 19.9, 27.3, 37.5, 47.3, 56.5, 60.2, 58.4, 50.8, 40.1, 32.1, 22.8] };
export const washington = { maxByMonth: [43.4, 47.1, 55.9, 66.6, 75.4, 84.2, 88.4, 86.5, 79.5, 68.4, 57.9, 46.8], minByMonth: [28.6, 30.9, 37.6, 47.0, 56.5, 66.3, 71.1, 69.7, 62.4, 50.6, 41.2, 32.5] };
export const grandRapids = { maxByMonth: [30.7, 33.7, 44.4, 58.2, 69.5, 79.0, 82.8, 80.6, 73.0, 60.3, 47.3, 34.8], minByMonth: [18.1, 19.9, 26.9, 37.7, 47.8, 57.7, 62.2, 61.0, 52.7, 41.8, 33.0, 23.5] };


const woosterSource = { from: 'computed independently from NOAA 1981-2010 normals of Wooster Exp Stn, Ohio; sums of the Ohio State University buckeye yard notes, which count floored', basis: 'recomputed' } as const;

export const woosterDays: SourcedRow<{ method: DegreeDayMethod; spread: number; sum: number }, { monthDay: string }>[] = [
  { case: 'floored, spread 8.77, 40 F-days', given: { method: 'floored', spread: 8.77, sum: 40 }, expect: { monthDay: '03-27' }, ...woosterSource },
  { case: 'floored, spread 8.77, 44 F-days', given: { method: 'floored', spread: 8.77, sum: 44 }, expect: { monthDay: '03-29' }, ...woosterSource },
  { case: 'floored, spread 8.77, 86 F-days', given: { method: 'floored', spread: 8.77, sum: 86 }, expect: { monthDay: '04-09' }, ...woosterSource },
  { case: 'floored, spread 8.77, 142 F-days', given: { method: 'floored', spread: 8.77, sum: 142 }, expect: { monthDay: '04-19' }, ...woosterSource },
  { case: 'floored, spread 8.77, 209 F-days', given: { method: 'floored', spread: 8.77, sum: 209 }, expect: { monthDay: '04-28' }, ...woosterSource },
  { case: 'sine, spread 8.77, 40 F-days', given: { method: 'sine', spread: 8.77, sum: 40 }, expect: { monthDay: '04-04' }, ...woosterSource },
  { case: 'sine, spread 8.77, 86 F-days', given: { method: 'sine', spread: 8.77, sum: 86 }, expect: { monthDay: '04-16' }, ...woosterSource },
  { case: 'sine, spread 8.77, 142 F-days', given: { method: 'sine', spread: 8.77, sum: 142 }, expect: { monthDay: '04-26' }, ...woosterSource },
  { case: 'simple, spread 8.77, 40 F-days', given: { method: 'simple', spread: 8.77, sum: 40 }, expect: { monthDay: '04-14' }, ...woosterSource },
  { case: 'simple, spread 8.77, 86 F-days', given: { method: 'simple', spread: 8.77, sum: 86 }, expect: { monthDay: '04-25' }, ...woosterSource },
  { case: 'simple, spread 8.77, 142 F-days', given: { method: 'simple', spread: 8.77, sum: 142 }, expect: { monthDay: '05-05' }, ...woosterSource },
  { case: 'simple, spread 0, 40 F-days', given: { method: 'simple', spread: 0, sum: 40 }, expect: { monthDay: '05-03' }, ...woosterSource },
  { case: 'simple, spread 0, 86 F-days', given: { method: 'simple', spread: 0, sum: 86 }, expect: { monthDay: '05-10' }, ...woosterSource },
  { case: 'simple, spread 0, 142 F-days', given: { method: 'simple', spread: 0, sum: 142 }, expect: { monthDay: '05-17' }, ...woosterSource },
  { case: 'floored, spread 0, 40 F-days', given: { method: 'floored', spread: 0, sum: 40 }, expect: { monthDay: '04-09' }, ...woosterSource },
  { case: 'floored, spread 0, 142 F-days', given: { method: 'floored', spread: 0, sum: 142 }, expect: { monthDay: '04-26' }, ...woosterSource },
];
