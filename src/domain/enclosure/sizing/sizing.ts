/** Request and result of sizing an enclosure; SI. */

