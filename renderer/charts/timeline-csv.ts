/** The columns of the file that a timeline is saved as. */
export const timelineColumns = ['when', 'jar', 'level', 'what'];
