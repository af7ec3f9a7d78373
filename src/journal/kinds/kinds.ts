import type { EntryType } from '../entries.ts';
import type { Kind } from './kind.ts';
import * as bikes from './ofBikes.ts';
import * as checks from './ofChecks.ts';
import * as joints from './ofJoints.ts';
import * as logbook from './ofLogbook.ts';
import * as parts from './ofParts.ts';
import * as rides from './ofRides.ts';
import * as steps from './ofSteps.ts';
import * as tools from './ofTools.ts';
import * as waits from './ofWaits.ts';
import * as wheels from './ofWheels.ts';

/**
 * The table of kinds: for each kind of entry its fields with their checks, the rows it is a fact of with their
 * reducers, and whether it may be corrected. A kind that forgets one does not compile.
 */
export const kinds: { [T in EntryType]: Kind<T> } = {
  'bike-started': bikes.bikeStarted,
  'bike-described': bikes.bikeDescribed,
  'bike-put-away': bikes.bikePutAway,
  'bike-taken-out': bikes.bikeTakenOut,
  'part-added': parts.partAdded,
  'part-described': parts.partDescribed,
  'part-moved': parts.partMoved,
  'part-changed': parts.partChanged,
  'joint-made': joints.jointMade,
  'joint-described': joints.jointDescribed,
  'joint-taken-apart': joints.jointTakenApart,
  'step-added': steps.stepAdded,
  'step-described': steps.stepDescribed,
  'step-moved': steps.stepMoved,
  'step-dropped': steps.stepDropped,
  'step-skipped': steps.stepSkipped,
  'step-reopened': steps.stepReopened,
  'step-opened': steps.stepOpened,
  'step-done': steps.stepDone,
  'torque-applied': joints.torqueApplied,
  'hand-tightened': joints.handTightened,
  'locker-applied': joints.lockerApplied,
  'wait-started': waits.waitStarted,
  'wait-ended': waits.waitEnded,
  'wait-changed': waits.waitChanged,
  'clock-moved': waits.clockMoved,
  'seal-marked': waits.sealMarked,
  'wheel-made': wheels.wheelMade,
  'wheel-described': wheels.wheelDescribed,
  'wheel-read': wheels.wheelRead,
  'wheel-taken-apart': wheels.wheelTakenApart,
  'tool-added': tools.toolAdded,
  'tool-described': tools.toolDescribed,
  'tool-put-away': tools.toolPutAway,
  'tool-found-out': tools.toolFoundOut,
  'defect-found': checks.defectFound,
  'defect-closed': checks.defectClosed,
  'ride-check-confirmed': checks.rideCheckConfirmed,
  'bike-released': checks.bikeReleased,
  'release-withdrawn': checks.releaseWithdrawn,
  'ride-logged': rides.rideLogged,
  'recheck-set': rides.recheckSet,
  'recheck-changed': rides.recheckChanged,
  'recheck-dropped': rides.recheckDropped,
  'torque-found': joints.torqueFound,
  'recheck-answered': rides.recheckAnswered,
  'note-added': logbook.noteAdded,
  'finding-accepted': checks.findingAccepted,
  'finding-noted': checks.findingNoted,
  'entry-corrected': logbook.entryCorrected,
  'settings-changed': logbook.settingsChanged,
  'demo-removed': logbook.demoRemoved,
};
