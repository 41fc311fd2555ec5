UPDATE document SET digest = '';
