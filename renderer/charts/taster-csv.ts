/** The columns of the files that the tasters' charts are saved as. */
export const useColumns = [
  'taster',
  'scores',
  'lowest',
  'highest',
  'mean',
  'mean low',
  'mean high',
  'standard deviation',
  'note',
];

export const agreementColumns = ['taster', 'samples shared', 'agreement', 'low', 'high', 'note'];
