/** What screens show of reminders once they are drawn, as one script. */
export { leftText } from '../../words/leftText.ts';
export { AskMessages } from './AskMessages.tsx';
export { CalendarButton } from './CalendarButton.tsx';
export { WhenOver } from './WhenOver.tsx';
