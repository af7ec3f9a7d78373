// Every page of a wheel, in one script.

export { EditWheel, NewWheel } from './form/WheelForm.tsx';
export { LaceWheel } from './LaceWheel.tsx';
export { ReadWheel } from './read/ReadWheel.tsx';
export { Wheel } from './Wheel.tsx';
