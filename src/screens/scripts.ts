import type { ComponentType } from 'preact';
import type { Logbook } from '../logbook.ts';
import { dueAhead } from '../practice/rechecks/dueAhead.ts';
import type { Route } from './route.ts';

export type ScreenComponent = ComponentType<Record<string, string>>;
type Load = () => Promise<ScreenComponent>;

const wheelRoom = () => import('./wheel/WheelRoom.ts');

/** Every screen is a script of its own, loaded when it is opened. */
const screens: Record<Route['at'], Load> = {
  home: async () => (await import('./home/Home.tsx')).Home as ScreenComponent,
  'new-bike': async () => (await import('./bike/NewBike.tsx')).NewBike as ScreenComponent,
  bike: async () => (await import('./bike/Bike.tsx')).Bike as ScreenComponent,
  bench: async () => (await import('./bench/Bench.tsx')).Bench as ScreenComponent,
  plan: async () => (await import('./plan/Plan.tsx')).Plan as ScreenComponent,
  fit: async () => (await import('./fit/Fit.tsx')).Fit as ScreenComponent,
  shelf: async () => (await import('./shelf/Shelf.tsx')).Shelf as ScreenComponent,
  'new-part': async () => (await import('./part/PartForm.tsx')).NewPart as ScreenComponent,
  part: async () => (await import('./part/Part.tsx')).Part as ScreenComponent,
  'edit-part': async () => (await import('./part/PartForm.tsx')).EditPart as ScreenComponent,
  'change-part': async () => (await import('./part/ChangePart.tsx')).ChangePart as ScreenComponent,
  'new-wheel': async () => (await wheelRoom()).NewWheel as ScreenComponent,
  wheel: async () => (await wheelRoom()).Wheel as ScreenComponent,
  'edit-wheel': async () => (await wheelRoom()).EditWheel as ScreenComponent,
  'lace-wheel': async () => (await wheelRoom()).LaceWheel as ScreenComponent,
  'read-wheel': async () => (await wheelRoom()).ReadWheel as ScreenComponent,
  'new-joint': async () => (await import('./joint/JointForm.tsx')).NewJoint as ScreenComponent,
  joint: async () => (await import('./joint/Joint.tsx')).Joint as ScreenComponent,
  'edit-joint': async () => (await import('./joint/JointForm.tsx')).EditJoint as ScreenComponent,
  seal: async () => (await import('./seal/Seal.tsx')).Seal as ScreenComponent,
  release: async () => (await import('./release/Release.tsx')).Release as ScreenComponent,
  ride: async () => (await import('./ride/Ride.tsx')).Ride as ScreenComponent,
  log: async () => (await import('./log/Log.tsx')).Log as ScreenComponent,
  rechecks: async () => (await import('./rechecks/Rechecks.tsx')).Rechecks as ScreenComponent,
  history: async () => (await import('./history/History.tsx')).History as ScreenComponent,
  sheet: async () => (await import('./sheet/Sheet.tsx')).BuildSheet as ScreenComponent,
  workings: async () => (await import('./workings/Workings.tsx')).Workings as ScreenComponent,
  tools: async () => (await import('./tools/Tools.tsx')).Tools as ScreenComponent,
  settings: async () => (await import('./settings/SettingsPage.tsx')).SettingsPage as ScreenComponent,
  check: async () => (await import('./check/Check.tsx')).Check as ScreenComponent,
};

const loaded = new Map<Route['at'], ScreenComponent>();

/** Loads a screen. One that fails to load is asked for again the next time. */
export async function loadScreen(at: Route['at']): Promise<void> {
  loaded.set(at, await screens[at]());
}

/** A screen that has been loaded. */
export function loadedScreen(at: Route['at']): ScreenComponent | undefined {
  return loaded.get(at);
}

/** What the screen an app is opened at shows first, read while its script is fetched. */
export async function readAhead(logbook: Logbook, route: Route): Promise<void> {
  await Promise.all([
    logbook.readAhead('settings', {}),
    logbook.readAhead('due', dueAhead(logbook.now())),
    route.at === 'bench' && logbook.readAhead('bench', { bikeId: route.bikeId }),
    route.at === 'bike' && logbook.readAhead('bike', { bikeId: route.bikeId }),
    route.at === 'home' && logbook.readAhead('bikes', {}),
  ]);
}
