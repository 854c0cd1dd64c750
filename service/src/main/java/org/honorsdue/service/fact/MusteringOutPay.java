package org.honorsdue.service.fact;

/**
 * The total mustering-out pay in whole dollars: the total, not the first payment.
 */
public record MusteringOutPay(int paper, int dollars, Basis basis) implements ServiceFact {}
