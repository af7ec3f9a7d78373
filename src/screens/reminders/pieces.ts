/** What screens show of reminders once they are drawn, as one script. */
export { AllDuties } from './AllDuties.tsx';
export { AskMessages } from './AskMessages.tsx';
export { CalendarButton } from './CalendarButton.tsx';
export { WhenOver } from './WhenOver.tsx';
